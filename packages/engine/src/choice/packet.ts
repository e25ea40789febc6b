import { climateDayOf, type DayNumber, dayNumber } from '../calendar/index.ts';
import {
  type CultivarTraits,
  classOfType,
  type DayLengthClass,
  type OnionType,
  onionTypes,
  type StartMethod,
  typeParameters,
} from '../plant/index.ts';
import { type Plan, planDefaults, runnerOf, type Site, stage } from '../season/index.ts';
import { photoperiodOfSunUp } from '../sky/index.ts';
import { typeForClass } from './type-for-class.ts';

/** What a packet says; null where it is silent. Class or hours are needed. */
export type Packet = {
  class: DayLengthClass | null;
  /** Day length from which it makes bulbs, sunrise to sunset, h. */
  hours: number | null;
  /** Days to maturity. */
  days: number | null;
};

/** What was made of it, for the grower to judge. */
export type PacketNote =
  /** The photoperiod, to civil twilight, from which bulbs are induced. */
  | { code: 'hours-taken'; hours: number; photoperiodH: number; type: OnionType }
  /** Hours that no onion of the class has: the nearest that one may have was taken. */
  | { code: 'hours-bounded'; hours: number; photoperiodH: number; type: OnionType }
  | { code: 'type-from-class'; class: DayLengthClass; type: OnionType }
  /** The days are those of this start here; `modelDays` is what the type's usual plant takes. */
  | {
      code: 'days-taken';
      days: number;
      modelDays: number;
      factor: number;
      start: StartMethod;
      startDay: DayNumber;
    }
  /** Days beyond what ripening can make up for: the fastest or slowest plausible onion was taken. */
  | {
      code: 'days-bounded';
      days: number;
      modelDays: number;
      factor: number;
      start: StartMethod;
      startDay: DayNumber;
    }
  /** No usual start of the type ripens here, so the days say nothing. */
  | { code: 'days-unused'; days: number };

/** The plant that a packet describes, with what was made of its words. */
export type PacketPlant = { type: OnionType; traits: CultivarTraits | null; notes: PacketNote[] };

/** Onions of one type ripen within a fifth of each other (model start values, memory). */
const ripeningRange = { low: 0.8, high: 1.2 } as const;
/** Published needs lie this far beyond the bounds of a type at most, h. */
const beyondTypeH = 0.5;

/**
 * The plant that a packet most likely holds, for this place: the model turned round.
 * Hours give the type and the photoperiod it needs; days to maturity, counted from the usual start of the type that
 * comes nearest, tell how fast it ripens.
 *
 * @param packet class or hours, or both; throws a RangeError where neither is given
 * @param year calendar year of the starts
 * @param use how and when it is started; null: as seed in spring
 */
export function plantOfPacket(
  site: Site,
  packet: Packet,
  year: number,
  use: { start: StartMethod; startDay: DayNumber } | null = null,
): PacketPlant {
  const notes: PacketNote[] = [];
  const { type, criticalPhotoperiodH } = needOf(site, packet, use ?? springSeed(site, year), notes);
  const ripeningFactor =
    packet.days === null ? null : ripeningOf(site, type, criticalPhotoperiodH, packet.days, year, notes);
  const traits =
    criticalPhotoperiodH === null && ripeningFactor === null
      ? null
      : { criticalPhotoperiodH, ripeningFactor, boltingFactor: null, dryMatterShare: null };
  return { type, traits, notes };
}

function needOf(
  site: Site,
  packet: Packet,
  { start, startDay }: { start: StartMethod; startDay: DayNumber },
  notes: PacketNote[],
): { type: OnionType; criticalPhotoperiodH: number | null } {
  const { hours, class: printed } = packet;
  if (hours === null) {
    if (printed === null) throw new RangeError('a packet needs a class or hours');
    const type = typeForClass(site, printed, start, startDay);
    notes.push({ code: 'type-from-class', class: printed, type });
    return { type, criticalPhotoperiodH: null };
  }
  // below the length at which bulbs form in earnest they begin to: half the way up the response
  const askedH = withTwilight(site, hours) - site.values.growth.photoperiodRampH / 2;
  const dayLengthClass = printed ?? classOfHours(hours);
  const possible = onionTypes.filter((type) => classOfType[type] === dayLengthClass);
  const miss = (type: OnionType) => Math.abs(site.values.types[type].criticalPhotoperiodH - askedH);
  const type = possible.reduce((a, b) => (miss(b) < miss(a) ? b : a));
  const { low, high } = typeParameters.criticalPhotoperiodH[type];
  const photoperiodH = Math.max(low - beyondTypeH, Math.min(high + beyondTypeH, askedH));
  notes.push({
    code: photoperiodH === askedH ? 'hours-taken' : 'hours-bounded',
    hours,
    photoperiodH,
    type,
  });
  return { type, criticalPhotoperiodH: photoperiodH };
}

/** Seed sown as days begin to lengthen. */
function springSeed(site: Site, year: number): { start: StartMethod; startDay: DayNumber } {
  return { start: 'direct-seed', startDay: dayNumber(year, site.climate.latitudeDeg < 0 ? 9 : 3, 21) };
}

/** Common practice, no source: short-day 10–12 h, intermediate-day 12–14 h, long-day 14–16 h. */
function classOfHours(hours: number): DayLengthClass {
  return hours < 12 ? 'short' : hours < 14 ? 'intermediate' : 'long';
}

/** Onions are bred, and their packets written, between these latitudes, degrees (memory). */
const bredFromDeg = 20;
const bredToDeg = 50;

/** As {@link photoperiodOfSunUp}, at this latitude or the nearest at which onions are bred. */
function withTwilight(site: Site, sunUpH: number): number {
  const latitude = Math.max(bredFromDeg, Math.min(bredToDeg, Math.abs(site.climate.latitudeDeg)));
  return photoperiodOfSunUp(sunUpH, latitude);
}

function ripeningOf(
  site: Site,
  type: OnionType,
  criticalPhotoperiodH: number | null,
  days: number,
  year: number,
  notes: PacketNote[],
): number | null {
  const daysOf = (start: UsualStart, ripeningFactor: number) => {
    const traits = { criticalPhotoperiodH, ripeningFactor, boltingFactor: null, dryMatterShare: null };
    const plan: Plan = { ...planDefaults, ...start, type, traits };
    const outcome = runnerOf(site, plan).meanSeason();
    return outcome.reached === stage.fallen ? outcome.fellOn : null;
  };
  const usual = usualStarts(site, year)
    .map((start) => ({ start, modelDays: daysOf(start, 1) }))
    .filter((trial) => trial.modelDays !== null) as { start: UsualStart; modelDays: number }[];
  if (usual.length === 0) {
    notes.push({ code: 'days-unused', days });
    return null;
  }
  const { start, modelDays } = usual.reduce((a, b) =>
    Math.abs(b.modelDays - days) < Math.abs(a.modelDays - days) ? b : a,
  );
  // Slower ripening is never sooner over, so halving finds it; a crop that is not over in its season is too slow.
  let low: number = ripeningRange.low;
  let high: number = ripeningRange.high;
  while (high - low > 0.005) {
    const middle = (low + high) / 2;
    if ((daysOf(start, middle) ?? Number.POSITIVE_INFINITY) < days) low = middle;
    else high = middle;
  }
  const factor = Number(((low + high) / 2).toFixed(2));
  const reached = daysOf(start, factor);
  const isReached = reached !== null && Math.abs(reached - days) <= 3;
  notes.push({ code: isReached ? 'days-taken' : 'days-bounded', days, modelDays, factor, ...start });
  return factor;
}

type UsualStart = { start: StartMethod; startDay: DayNumber };

/** Seed and plants go into a bed this warm in spring, °C (common practice, no source). */
const springBedC = 7;
/** Seed for a crop that winters is sown when the bed has cooled to this, °C (common practice, no source). */
const autumnBedC = 18;

/**
 * Starts that a packet's days may count from: seed and plants at the first workable bed after midwinter, seed and
 * plants in autumn; where the bed is never too cold, or never warm, the middle of winter or summer.
 */
function usualStarts(site: Site, year: number): UsualStart[] {
  const bedC = site.mean('none').soilMeanC;
  const midwinter =
    dayNumber(year, site.climate.latitudeDeg < 0 ? 6 : 12, 21) - (site.climate.latitudeDeg < 0 ? 0 : 365);
  const midsummer = midwinter + 182;
  const first = (from: DayNumber, isReady: (bed: number) => boolean) => {
    let day = from;
    while (day < from + 182 && !isReady(bedC[climateDayOf(day)])) day++;
    return day;
  };
  const spring = first(midwinter, (bed) => bed >= springBedC);
  const autumn = first(midsummer, (bed) => bed <= autumnBedC);
  return [
    { start: 'direct-seed', startDay: spring },
    { start: 'bought-transplants', startDay: spring },
    { start: 'direct-seed', startDay: autumn },
    { start: 'bought-transplants', startDay: autumn },
  ];
}
