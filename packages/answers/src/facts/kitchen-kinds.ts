import { type Cultivar, nearnesses, nearnessOf } from '@neckfall/data';
import type { KitchenKind, Like } from '@neckfall/engine';

/** Kinds that keep so long, in the middle of their usual months, are keepers. */
const keeperMonths = 6;
/** Up to this nearness a name is known to be sold or grown in a country. */
const knownStep = /* @__PURE__ */ nearnesses.indexOf('grown');

/** Wants that an onion answers, from what the catalogue says of it. */
function likesOf({ mild, uses, colour, keepsMonths }: Cultivar): Like[] {
  const likes: Like[] = [];
  if (mild || uses.includes('sweet')) likes.push('mild');
  if (uses.includes('storage') || (keepsMonths[0] + keepsMonths[1]) / 2 >= keeperMonths) likes.push('keeper');
  if (colour === 'red') likes.push('red');
  return likes;
}

/**
 * Kinds for a kitchen that can be had in a country: those of each type and start that are nearest to its shops; all
 * where the country is not known. They are plants of their type; what a cultivar does otherwise is left to its own page.
 */
export function kitchenKindsOf(cultivars: readonly Cultivar[], country: string | null): KitchenKind[] {
  const bulbs = cultivars.filter(({ kind }) => kind === 'bulb-onion');
  const stepTo = (cultivar: Cultivar) =>
    country === null ? 0 : nearnesses.indexOf(nearnessOf(cultivar, country));
  const nearest = new Map<string, number>();
  for (const cultivar of bulbs) {
    for (const start of cultivar.starts) {
      const way = `${cultivar.type} ${start}`;
      nearest.set(way, Math.min(nearest.get(way) ?? Number.POSITIVE_INFINITY, stepTo(cultivar)));
    }
  }
  const kinds = new Map<string, KitchenKind & { names: string[] }>();
  for (const cultivar of bulbs) {
    const { name, type, keepsMonths, keepsFrom } = cultivar;
    const likes = likesOf(cultivar);
    const winters = cultivar.uses.includes('overwinters');
    for (const start of cultivar.starts) {
      const way = `${type} ${start}`;
      if (stepTo(cultivar) > Math.max(knownStep, nearest.get(way) ?? 0)) continue;
      const key = `${way} ${keepsMonths.join()} ${keepsFrom} ${likes.join()} ${winters}`;
      const kind = kinds.get(key);
      if (kind) kind.names.push(name);
      else
        kinds.set(key, { names: [name], type, traits: null, start, keepsMonths, keepsFrom, likes, winters });
    }
  }
  return [...kinds.values()];
}
