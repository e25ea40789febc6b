import type { Symptom } from '@neckfall/engine';
import { growing } from './growing.tsx';
import { lifting } from './lifting.tsx';
import { inStore } from './store.tsx';

const drawings = { ...growing, ...lifting, ...inStore };

/** What a symptom looks like, small, for the side of its words: they say all that it shows. */
export function SymptomDrawing({ of }: { of: Symptom }) {
  const Drawing = drawings[of];
  return (
    <svg
      class="symptom-drawing"
      aria-hidden="true"
      viewBox="0 0 64 64"
      width={64}
      height={64}
      stroke-linecap="round"
      stroke-linejoin="round"
    >
      <Drawing />
    </svg>
  );
}
