import type { PlaceYear } from '@neckfall/answers';
import { yearTableOf } from '../pictures/index.ts';
import { voice } from '../state/settings.ts';
import { Twin } from './Twin.tsx';

/** The numbers of a year line, and what its water means where that is not said under it. */
export function YearTwin({ year, note = null }: { year: PlaceYear; note?: string | null }) {
  return <Twin {...yearTableOf({ year, speaker: voice.value })} note={note} />;
}
