import { cautionSentence } from '@neckfall/answers';
import { voice } from '../../../state/settings.ts';
import type { NumberedJob } from './work-of.ts';

/** What to mind at some work, each thing once; nothing where nothing can hurt. */
export function WorkCautions({ work }: { work: readonly NumberedJob[] }) {
  const cautions = new Set(work.flatMap(({ job }) => job.cautions));
  if (cautions.size === 0) return null;
  return (
    <ul class="work-cautions">
      {[...cautions].map((caution) => (
        <li key={caution}>{cautionSentence(caution, voice.value)}</li>
      ))}
    </ul>
  );
}
