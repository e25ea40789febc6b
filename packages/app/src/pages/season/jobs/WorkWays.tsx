import { jobName } from '@neckfall/answers';
import type { DayNumber, Job, JobMarkState } from '@neckfall/engine';
import { useRef, useState } from 'preact/hooks';
import { DayField } from '../../../controls/DayField.tsx';
import { voice } from '../../../state/settings.ts';
import { today } from '../../../state/today.ts';
import { begun } from '../seen/begun.ts';
import { entryOfWork } from './entry-of.ts';
import { markWork, type WorkAt } from './mark-work.ts';

/** Put off so long unless another day is named; and no farther than a season reaches, days. */
const putOffDays = { usual: 7, most: 300 } as const;

type Props = {
  job: Job;
  at: WorkAt;
  /** What was said of it goes with its line: what to go on from. */
  onMarked: () => void;
};

/** What may be said of a piece of work, in words behind its sentence. */
export function WorkWays({ job, at, onMarked }: Props) {
  const { say } = voice.value;
  const usual = Math.max(today.value, job.from) + putOffDays.usual;
  const [until, putUntil] = useState<number | null>(null);
  const putOff = useRef<HTMLButtonElement>(null);
  const what = jobName(job, voice.value);
  const mark = async (state: JobMarkState, until?: DayNumber) => {
    if (await markWork(job, at, state, until)) onMarked();
  };
  const leave = () => {
    putUntil(null);
    putOff.current?.focus();
  };
  return (
    <>
      <span class="work-ways">
        <button
          type="button"
          class="plain"
          aria-label={say('app.work.done-of', { what })}
          onClick={() => {
            const entry = entryOfWork(job);
            if (entry) begun.value = entry;
            else void mark('done');
          }}
        >
          {say('app.work.done')}
        </button>
        <button
          ref={putOff}
          type="button"
          class="plain"
          aria-label={say('app.work.put-off-of', { what })}
          aria-expanded={until !== null}
          onClick={() => putUntil(until === null ? usual : null)}
        >
          {say('app.work.put-off')}
        </button>
        <button
          type="button"
          class="plain"
          aria-label={say('app.work.leave-out-of', { what })}
          onClick={() => void mark('left-out')}
        >
          {say('app.work.leave-out')}
        </button>
      </span>
      {until !== null && (
        <form
          class="form put-off"
          onSubmit={(event) => {
            event.preventDefault();
            if (event.currentTarget.querySelector('[aria-invalid="true"]') === null)
              void mark('put-off', until);
          }}
        >
          <DayField
            label={say('app.work.put-off.until')}
            value={until}
            min={today.value + 1}
            max={today.value + putOffDays.most}
            onValue={(day) => day !== null && putUntil(day)}
          />
          <div class="row">
            <button type="submit">{say('app.work.put-off.do')}</button>
            <button type="button" onClick={leave}>
              {say('app.seen.leave-it')}
            </button>
          </div>
        </form>
      )}
    </>
  );
}
