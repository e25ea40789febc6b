import { leafCheckSentence } from '@neckfall/answers';
import type { LeafCheckpoint } from '@neckfall/engine';
import { useRef, useState } from 'preact/hooks';
import { voice } from '../../../state/settings.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { Told } from '../Told.tsx';
import { PastWork } from './PastWork.tsx';
import { PutIntoCalendar } from './PutIntoCalendar.tsx';
import { stretchesOf } from './stretches.ts';
import { WorkCautions } from './WorkCautions.tsx';
import { WorkList } from './WorkList.tsx';
import { workOf } from './work-of.ts';

/** Near the day on which leaves are to be counted, what should be seen now says as much, days. */
const nearDays = 7;

/** The work after this week by stretches of the crop's life, and apart what is done or gone by. */
export function AllWork({ ahead }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  const { say } = speaker;
  const [isOpen, open] = useState(false);
  const head = useRef<HTMLElement>(null);
  const { jobs, stand, leafCheckpoint } = ahead;
  if (jobs.length === 0) return null;
  const { coming, past } = workOf(jobs, stand.day);
  return (
    <section class="all-work" aria-labelledby="all-work">
      <details class="fold" onToggle={(event) => open(event.currentTarget.open)}>
        <summary ref={head}>
          <h2 id="all-work">{say('app.work.all', { count: coming.length })}</h2>
        </summary>
        {isOpen && (
          <>
            <Told at="work" onTakenBack={() => head.current?.focus()} />
            <Coming ahead={ahead} coming={coming} onMarked={() => head.current?.focus()} />
            {leafCheckpoint && isToCount(leafCheckpoint, stand.day) && (
              <p>{leafCheckSentence(leafCheckpoint, speaker)}</p>
            )}
            <PutIntoCalendar ahead={ahead} />
            <PastWork past={past} summary={ahead.summary} onMarked={() => head.current?.focus()} />
          </>
        )}
      </details>
    </section>
  );
}

type ComingProps = { ahead: SeasonAhead; coming: ReturnType<typeof workOf>['coming']; onMarked: () => void };

function Coming({ ahead: { summary }, coming, onMarked }: ComingProps) {
  const { say } = voice.value;
  return (
    <>
      {stretchesOf(coming, summary).map(({ name, work }) => (
        <div key={name}>
          <h3>{say(`app.work.stretch.${name}`)}</h3>
          <WorkList work={work} summary={summary} at="work" onMarked={onMarked} />
          <WorkCautions work={work} />
        </div>
      ))}
    </>
  );
}

/** Leaves that part good bulbs from small ones are counted until a week late; others are worth a word before. */
function isToCount({ day, parting }: LeafCheckpoint, today: number): boolean {
  return today < day - nearDays || (parting !== null && today <= day + nearDays);
}
