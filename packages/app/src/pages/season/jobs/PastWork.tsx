import { jobName, jobSentence } from '@neckfall/answers';
import type { Job, SeasonSummary } from '@neckfall/engine';
import { marks, planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import { markWork, reopenWork } from './mark-work.ts';

type Props = { past: readonly Job[]; summary: SeasonSummary; onMarked: () => void };

/** What was done or left out, and what nobody said anything of before its days went by. */
export function PastWork({ past, summary, onMarked }: Props) {
  const { say } = voice.value;
  if (past.length === 0) return null;
  return (
    <details>
      <summary>{say('app.work.past', { count: past.length })}</summary>
      <ul>
        {past.map((job) => (
          <li key={job.id}>
            {jobSentence(job, summary, voice.value)}{' '}
            {planting.value && <PastWays job={job} onMarked={onMarked} />}
          </li>
        ))}
      </ul>
    </details>
  );
}

function PastWays({ job, onMarked }: { job: Job; onMarked: () => void }) {
  const { say } = voice.value;
  const what = jobName(job, voice.value);
  const isMarked = marks.value.some((mark) => mark.job === job.id && mark.state !== 'put-off');
  const after = (work: Promise<boolean>) => void work.then((isDone) => isDone && onMarked());
  if (isMarked) {
    return (
      <button
        type="button"
        class="plain"
        aria-label={say('app.work.open-of', { what })}
        onClick={() => after(reopenWork(job))}
      >
        {say('app.work.open')}
      </button>
    );
  }
  if (job.state !== 'gone-by') return null;
  return (
    <button
      type="button"
      class="plain"
      aria-label={say('app.work.done-of', { what })}
      onClick={() => after(markWork(job, 'work', 'done'))}
    >
      {say('app.work.done')}
    </button>
  );
}
