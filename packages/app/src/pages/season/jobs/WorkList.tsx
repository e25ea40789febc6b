import { jobSentence } from '@neckfall/answers';
import type { SeasonSummary } from '@neckfall/engine';
import { planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import type { WorkAt } from './mark-work.ts';
import { WorkWays } from './WorkWays.tsx';
import type { NumberedJob } from './work-of.ts';

type Props = {
  work: readonly NumberedJob[];
  summary: SeasonSummary;
  at: WorkAt;
  /** What was said of it goes with its line: what to go on from. */
  onMarked: () => void;
};

/** Work under its numbers: what to do and why, and what may be said of it once its crop is kept. */
export function WorkList({ work, summary, at, onMarked }: Props) {
  return (
    <ol class="work">
      {work.map(({ number, job }) => (
        <li key={job.id} value={number}>
          {jobSentence(job, summary, voice.value)}{' '}
          {planting.value && <WorkWays job={job} at={at} onMarked={onMarked} />}
        </li>
      ))}
    </ol>
  );
}
