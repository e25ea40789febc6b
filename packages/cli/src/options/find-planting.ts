import { foldName, type Garden, type GardenPlanting } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { nearest } from '../refusal/nearest.ts';
import { refuse } from '../refusal/refusal.ts';

const field = '--planting';
/** Plantings that a refusal lists. */
const mostListed = 8;

/** The planting of this id or, where only one is called so, of this name; `file` is where it was looked for. */
export function findPlanting(
  garden: Garden,
  named: string,
  file: string,
  { all, any }: Speaker,
): GardenPlanting {
  const { plantings } = garden;
  const byId = plantings.find(({ id }) => id === named.trim());
  if (byId) return byId;
  const same = plantings.filter(({ name }) => foldName(name) === foldName(named));
  if (same.length === 1) return same[0];
  const listed = (entries: readonly GardenPlanting[], join: (items: readonly string[]) => string) => {
    const names = entries.slice(0, mostListed).map(({ name, id }) => `${name} (${id})`);
    return join(entries.length > mostListed ? [...names, '…'] : names);
  };
  const values = { value: named, file, count: same.length > 0 ? same.length : plantings.length };
  if (same.length > 1) {
    throw refuse('planting-ambiguous', { field, values, expected: listed(same, any) });
  }
  const names = new Map(
    plantings.flatMap(({ id, name }) => [id, name].map((word) => [foldName(word), word])),
  );
  throw refuse('planting-unknown', {
    field,
    values,
    expected: listed(plantings, all),
    nearest: nearest(foldName(named), [...names.keys()]).map((word) => names.get(word) ?? word),
  });
}
