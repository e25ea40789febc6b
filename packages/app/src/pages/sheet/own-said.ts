import { measuredOwn } from '@neckfall/answers';
import { asked } from '../../state/route.ts';

const held = { heading: '', note: '' };

/** What a field of the address says, null where it is empty; where it is too long, the last that was not. */
export function ownSaid(field: 'heading' | 'note'): string | null {
  const said = asked.value[field] ?? '';
  if (!measuredOwn(field, said).isTooLong) held[field] = said;
  return held[field].trim() === '' ? null : held[field];
}
