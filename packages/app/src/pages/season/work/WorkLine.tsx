import { jobSentence } from '@neckfall/answers';
import type { SeasonSummary } from '@neckfall/engine';
import { planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import type { WorkAt } from './mark-work.ts';
import { WorkWays } from './WorkWays.tsx';
import type { NumberedJob } from './work-of.ts';

type Props = NumberedJob & {
  summary: SeasonSummary;
  at: WorkAt;
  onMarked: () => void;
};

/** A piece of work under its number: what to do and why, and what may be said of it once its crop is kept. */
export function WorkLine({ number, job, summary, at, onMarked }: Props) {
  return (
    <li value={number}>
      {jobSentence(job, summary, voice.value)}{' '}
      {planting.value && <WorkWays job={job} at={at} onMarked={onMarked} />}
    </li>
  );
}
