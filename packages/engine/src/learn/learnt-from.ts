import { foldName, type Garden, type GardenPlanting } from '../garden/index.ts';
import type { Belief } from './parameters.ts';

/** Plantings further back than this say no more of the onion. */
const longestChain = 10;

/**
 * What earlier plantings of the same onion at the same place have told, each learnt from with what those before it told;
 * null where a planting takes up nothing. Rounds of plantings that take up from each other end where they close.
 *
 * @param learn what a planting tells, believing this much before; null where it can't be grown as it stands
 */
export function believedOf(
  { plantings }: Pick<Garden, 'plantings'>,
  planting: GardenPlanting,
  learn: (earlier: GardenPlanting, believed: Belief | null) => Belief | null,
): Belief | null {
  const chain: GardenPlanting[] = [];
  let current = planting;
  while (chain.length < longestChain) {
    const earlier = plantingLearntFrom({ plantings }, current);
    if (!earlier || earlier === planting || chain.includes(earlier)) break;
    chain.push(earlier);
    current = earlier;
  }
  return chain.reduceRight<Belief | null>((believed, earlier) => learn(earlier, believed) ?? believed, null);
}

/** The planting that one starts from; null where there is none, or it is of another onion or place by now. */
export function plantingLearntFrom(
  { plantings }: Pick<Garden, 'plantings'>,
  planting: GardenPlanting,
): GardenPlanting | null {
  const from = plantings.find(({ id }) => id === planting.learntFrom);
  return from && from.id !== planting.id && isSame(from, planting) ? from : null;
}

/** Whether one planting's season can tell of another's: the same onion, by name or by packet, at the same place. */
function isSame(a: GardenPlanting, b: GardenPlanting): boolean {
  const onion = ({ cultivar, class: printed, packetHours, packetDays }: GardenPlanting) =>
    cultivar === null ? [printed, packetHours, packetDays].join(' ') : foldName(cultivar);
  return a.placeId === b.placeId && onion(a) === onion(b);
}

/** The latest planting of the same onion at the same place that was started before and looked at: a new one can learn from it. */
export function plantingBefore(
  { plantings, observations }: Pick<Garden, 'plantings' | 'observations'>,
  planting: GardenPlanting,
): GardenPlanting | null {
  const seen = new Set(observations.map(({ plantingId }) => plantingId));
  const startOf = ({ startDate }: GardenPlanting) => startDate ?? '';
  const earlier = plantings.filter(
    (other) =>
      other.id !== planting.id &&
      seen.has(other.id) &&
      isSame(other, planting) &&
      startOf(other) !== '' &&
      (planting.startDate === null || startOf(other) < planting.startDate),
  );
  return earlier.reduce<GardenPlanting | null>(
    (latest, other) => (latest === null || startOf(other) > startOf(latest) ? other : latest),
    null,
  );
}
