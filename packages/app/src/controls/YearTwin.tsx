import type { PlaceYear } from '@neckfall/answers';
import { yearTableOf } from '../pictures/index.ts';
import { voice } from '../state/settings.ts';
import { Twin } from './Twin.tsx';

/** The numbers of a year line. */
export function YearTwin({ year }: { year: PlaceYear }) {
  return <Twin {...yearTableOf({ year, speaker: voice.value })} />;
}
