import type { PlaceYear } from '@neckfall/answers';
import { type DataTableProps, yearTableOf } from '@neckfall/pictures';
import { voice } from '../state/settings.ts';
import { Twin } from './Twin.tsx';

type Props = { year: PlaceYear; note?: string | null; also?: DataTableProps | null };

/** The numbers of a year line, and what its water means where that is not said under it. */
export function YearTwin({ year, note = null, also = null }: Props) {
  return <Twin {...yearTableOf({ year, speaker: voice.value })} note={note} also={also} />;
}
