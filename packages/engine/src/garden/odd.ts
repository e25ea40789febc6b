import { standOf } from '../bed/index.ts';
import { type DayNumber, parseDay } from '../calendar/index.ts';
import type { Observation } from './observation.ts';
import type { GardenPlanting } from './planting.ts';

/** What may be a slip of the pen. Nothing is refused for it: the grower is asked. */
export type OddValue =
  | { code: 'leaves-many'; values: { leaves: number; most: number } }
  | { code: 'leaves-fewer'; values: { leaves: number; before: number; beforeDay: DayNumber } }
  | { code: 'neck-wide'; values: { neckMm: number; bulbMm: number } }
  | { code: 'tops-less'; values: { sharePct: number; beforePct: number; beforeDay: DayNumber } }
  | { code: 'flowering-many'; values: { flowering: number; standing: number } }
  | { code: 'bulbs-many'; values: { bulbs: number; plants: number } }
  | { code: 'thick-many'; values: { thick: number; bulbs: number } }
  | { code: 'water-much'; values: { litres: number; areaM2: number } }
  | { code: 'feed-much'; values: { grams: number; areaM2: number } }
  | { code: 'before-start'; values: { day: DayNumber; startDay: DayNumber } }
  | { code: 'long-after'; values: { day: DayNumber; startDay: DayNumber } }
  | { code: 'in-future'; values: { day: DayNumber; today: DayNumber } };

/** What is odd, as the code of a message. */
export type OddCode = OddValue['code'];

/*
 * Limits of the usual, common practice without a source but for the area: an onion seldom has more than a dozen and a
 * half green leaves at once, makes one in four days where it is warmest, and loses one or two between two looks.
 */
const mostLeaves = 18;
const daysALeaf = 4;
/** Leaves of a plant as it is bought, and of all shoots of a set in its first weeks. */
const leavesAtStart = { 'direct-seed': 1, 'raised-seedlings': 1, 'bought-transplants': 5, sets: 6 } as const;
const fewLeaves = 3;
/** From then on a bulb is wider than its neck, however young it looks. */
const lateDays = 120;
const swellingMm = 25;
/** A watering is a tenth of it as a rule. */
const mostLitresPerM2 = 50;
/** Of a product at a time; a whole season's feed is seldom as much. */
const mostGramsPerM2 = 100;
const longestDays = 731;

/**
 * What is odd about an observation, beside its planting and the other observations of it.
 *
 * @param others of the same planting, in any order; the observation itself among them is passed over
 */
export function odd(
  observation: Observation,
  planting: GardenPlanting,
  others: readonly Observation[],
  today: DayNumber,
): OddValue[] {
  const day = dayOf(observation);
  const startDay = planting.startDate === null ? null : parseDay(planting.startDate);
  const age = startDay === null ? null : day - startDay;
  const earlier = others
    .filter((other) => other.id !== observation.id && other.date <= observation.date)
    .sort((a, b) => (a.date < b.date ? 1 : -1));
  const found: OddValue[] = [];
  if (day > today) found.push({ code: 'in-future', values: { day, today } });
  if (startDay !== null && day < startDay) found.push({ code: 'before-start', values: { day, startDay } });
  if (startDay !== null && day > startDay + longestDays)
    found.push({ code: 'long-after', values: { day, startDay } });
  const wereTopsOver = [observation, ...earlier].some(({ topsOverShare = 0 }) => topsOverShare > 0);
  const late = wereTopsOver || (age !== null && age > lateDays);
  found.push(
    ...oddLeaves(observation, planting, earlier, age, wereTopsOver),
    ...oddNeck(observation, late),
    ...oddTops(observation, earlier),
    ...oddThick(observation),
    ...oddCounts(observation, planting, earlier),
    ...oddGifts(observation, planting, others),
  );
  return found;
}

function oddLeaves(
  { leavesGreen: leaves }: Observation,
  { start }: GardenPlanting,
  earlier: readonly Observation[],
  age: number | null,
  wereTopsOver: boolean,
): OddValue[] {
  if (leaves === undefined) return [];
  const most =
    age === null || age < 0
      ? mostLeaves
      : Math.min(mostLeaves, Math.ceil(leavesAtStart[start ?? 'sets'] + age / daysALeaf));
  if (leaves > most) return [{ code: 'leaves-many', values: { leaves, most } }];
  const last = earlier.find(({ leavesGreen }) => leavesGreen !== undefined);
  const before = last?.leavesGreen ?? 0;
  // once tops are over, leaves go fast
  if (!last || wereTopsOver || leaves >= before - fewLeaves) return [];
  return [{ code: 'leaves-fewer', values: { leaves, before, beforeDay: dayOf(last) } }];
}

function oddNeck({ neckMm, bulbMm }: Observation, isLate: boolean): OddValue[] {
  if (neckMm === undefined || bulbMm === undefined || neckMm <= bulbMm) return [];
  return isLate || bulbMm >= swellingMm ? [{ code: 'neck-wide', values: { neckMm, bulbMm } }] : [];
}

function oddTops({ topsOverShare: share }: Observation, earlier: readonly Observation[]): OddValue[] {
  const last = earlier.find(({ topsOverShare }) => topsOverShare !== undefined);
  const before = last?.topsOverShare ?? 0;
  if (share === undefined || !last || share >= before) return [];
  return [
    { code: 'tops-less', values: { sharePct: 100 * share, beforePct: 100 * before, beforeDay: dayOf(last) } },
  ];
}

function oddCounts(
  observation: Observation,
  { plants: planned }: GardenPlanting,
  earlier: readonly Observation[],
): OddValue[] {
  const { floweringCount: flowering, bulbCount, soundCount, sproutedCount, rottenCount } = observation;
  const standing =
    [observation, ...earlier].find(({ standCount }) => standCount !== undefined)?.standCount ?? planned;
  if (standing === null) return [];
  // plants that stood at first may have been pulled since: no more came
  const plants = Math.max(standing, planned ?? 0, ...earlier.map(({ standCount = 0 }) => standCount));
  const stored = (soundCount ?? 0) + (sproutedCount ?? 0) + (rottenCount ?? 0);
  const bulbs = Math.max(bulbCount ?? 0, stored);
  return [
    ...(flowering !== undefined && flowering > standing
      ? [{ code: 'flowering-many' as const, values: { flowering, standing } }]
      : []),
    ...(bulbs > plants ? [{ code: 'bulbs-many' as const, values: { bulbs, plants } }] : []),
  ];
}

function oddThick({ thickNeckCount: thick, bulbCount: bulbs }: Observation): OddValue[] {
  if (thick === undefined || bulbs === undefined || thick <= bulbs) return [];
  return [{ code: 'thick-many', values: { thick, bulbs } }];
}

/** Water of the whole day, and a feed, over the ground that the planting covers. */
function oddGifts(
  observation: Observation,
  { plants, rowDistanceCm: rowCm, plantDistanceCm: plantCm, plantsPerStation }: GardenPlanting,
  others: readonly Observation[],
): OddValue[] {
  if (plants === null || rowCm === null || plantCm === null) return [];
  const { areaM2 } = standOf(plants, { rowCm, plantCm, perStation: plantsPerStation ?? 1 });
  const { wateredLitres, fedG: grams = 0 } = observation;
  const sameDay = others.filter((other) => other.id !== observation.id && other.date === observation.date);
  const litres =
    wateredLitres === undefined
      ? 0
      : sameDay.reduce((sum, other) => sum + (other.wateredLitres ?? 0), wateredLitres);
  return [
    ...(litres > mostLitresPerM2 * areaM2
      ? [{ code: 'water-much' as const, values: { litres, areaM2 } }]
      : []),
    ...(grams > mostGramsPerM2 * areaM2 ? [{ code: 'feed-much' as const, values: { grams, areaM2 } }] : []),
  ];
}

function dayOf({ date }: Observation): DayNumber {
  return parseDay(date) ?? 0;
}
