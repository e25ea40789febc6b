import { jobSentence } from '@neckfall/answers';
import { useRef } from 'preact/hooks';
import { planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { keepPlan, planToSave } from '../keep-plan.ts';
import { Told } from '../Told.tsx';
import { WorkCautions } from './WorkCautions.tsx';
import { WorkList } from './WorkList.tsx';
import { workOf } from './work-of.ts';

/** Where there is little room, what presses most is shown, and more of a week folded away, and what to mind at it. */
const fewestShown = 2;
const hasRoom = () => matchMedia('(min-width: 40em)').matches;

/** What to do this week and why, most urgent first; where there is nothing, what comes next. */
export function ThisWeek({ ahead }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  const { say, day } = speaker;
  const heading = useRef<HTMLHeadingElement>(null);
  const { summary, jobs, stand } = ahead;
  const { due, coming } = workOf(jobs, stand.day);
  const mostShown = hasRoom() ? due.length : fewestShown;
  const goOn = () => heading.current?.focus();
  return (
    <section class="this-week" aria-labelledby="this-week">
      <h2 id="this-week" ref={heading} tabIndex={-1}>
        {say('app.work.this-week')}
      </h2>
      {due.length > 0 && (
        <WorkList work={due.slice(0, mostShown)} summary={summary} at="week" onMarked={goOn} />
      )}
      {due.length > mostShown && (
        <details>
          <summary>{say('app.work.more', { count: due.length - mostShown })}</summary>
          <WorkList work={due.slice(mostShown)} summary={summary} at="week" onMarked={goOn} />
        </details>
      )}
      {due.some(({ job }) => job.cautions.length > 0) && (
        <details open={hasRoom()}>
          <summary>{say('app.work.cautions')}</summary>
          <WorkCautions work={due} />
        </details>
      )}
      {due.length === 0 && (
        <p>
          {coming.length > 0
            ? say('app.work.none', {
                date: day(coming[0].job.from),
                what: jobSentence(coming[0].job, summary, speaker),
              })
            : say('app.work.over')}
        </p>
      )}
      <Told at="week" onTakenBack={goOn} />
      {due.length > 0 && !planting.value && (
        <p class="keep-first">
          {say('app.work.keep')}{' '}
          <button
            type="button"
            class="plain"
            onClick={async () => {
              if ((await keepPlan(planToSave(ahead), null)) !== null) goOn();
            }}
          >
            {say('app.work.keep.do')}
          </button>
        </p>
      )}
    </section>
  );
}
