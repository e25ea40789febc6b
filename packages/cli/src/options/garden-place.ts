import { foldName, type Garden, type GardenPlace } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { nearest } from '../refusal/nearest.ts';
import { refuse } from '../refusal/refusal.ts';

const field = '--place';
/** Places that a refusal lists. */
const mostListed = 8;

/** The place of a garden with this id or name; its only one where none was named. @param file where it was looked for */
export function findGardenPlace(
  { places }: Garden,
  named: string | undefined,
  file: string,
  { any }: Speaker,
): GardenPlace {
  const listed = places.slice(0, mostListed).map(({ name, id }) => `${name} (${id})`);
  const expected = any(places.length > mostListed ? [...listed, '…'] : listed);
  if (places.length === 0) throw refuse('keep-placeless', { field: 'GARDEN', exit: 3, values: { file } });
  if (named === undefined) {
    if (places.length === 1) return places[0];
    throw refuse('keep-which-place', { field, values: { file, count: places.length }, expected });
  }
  const asked = named.trim();
  const byId = places.find(({ id }) => id === asked);
  const same = places.filter(({ name }) => foldName(name) === foldName(asked));
  if (byId) return byId;
  if (same.length === 1) return same[0];
  const words = places.flatMap(({ id, name }) => [id, name]);
  throw refuse('keep-place-unknown', {
    field,
    values: { value: named, file, count: same.length },
    expected,
    nearest: same.length > 1 ? [] : nearest(asked, words),
  });
}
