import { jobSentence } from '@neckfall/answers';
import { useRef } from 'preact/hooks';
import { planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { keepPlan, planToSave } from '../keep-plan.ts';
import { Told } from '../Told.tsx';
import { WorkLine } from './WorkLine.tsx';
import { workOf } from './work-of.ts';

/** What to do this week and why, most urgent first; where there is nothing, what comes next. */
export function ThisWeek({ ahead }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  const { say, day } = speaker;
  const heading = useRef<HTMLHeadingElement>(null);
  const { summary, jobs, stand } = ahead;
  const { due, coming } = workOf(jobs, stand.day);
  const goOn = () => heading.current?.focus();
  return (
    <section class="this-week" aria-labelledby="this-week">
      <h2 id="this-week" ref={heading} tabIndex={-1}>
        {say('app.work.this-week')}
      </h2>
      {due.length > 0 && (
        <ol class="work">
          {due.map((one) => (
            <WorkLine key={one.job.id} {...one} summary={summary} at="week" onMarked={goOn} />
          ))}
        </ol>
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
