import { type DailyRecord, emptyRecord, type RecordField } from '../daily-record.ts';
import { amountsOfDayCounter, amountsOfSumCounter } from './counter-amounts.ts';

/**
 * Readings within days, a value of each quantity a reading; NaN where nothing was measured, null where nothing ever
 * is. Values that can't be believed are taken out before.
 */
export type Readings = {
  /**
   * When, in minutes since 1970-01-01 00:00 in the standard time of the place. In any order, at uneven steps; the
   * hour that comes twice in autumn may stand there twice.
   */
  minute: Float64Array;
  tempC: Float64Array | null;
  /** Least and most since the reading before: used only where there is no `tempC`. */
  tempMinC: Float64Array | null;
  tempMaxC: Float64Array | null;
  /** Amount since the reading before. */
  rainMm: Float64Array | null;
  /** Counter that is set back at midnight. */
  rainDayMm: Float64Array | null;
  /** Counter that is set back seldom or never. */
  rainSumMm: Float64Array | null;
  /** Mean since the reading before, W m⁻². */
  solarW: Float64Array | null;
  /** Energy since the reading before, MJ m⁻². */
  solarMJ: Float64Array | null;
};

/** Of its readings a day must have so many to count: 20 of 24 hourly ones. */
const neededShare = 5 / 6;

const dayMinutes = 1440;
/** Clocks are set back by this much. */
const clockChange = 60;
/** Sun that a day's first and last reading may have of its highest for the day to be whole. */
const darkShare = 0.1;

/**
 * Days of readings. A temperature belongs to the day of its stamp; an amount fell before its stamp, so that it
 * belongs to the day of half an interval before. The days are those from the first stamp's to the last one's.
 */
export function daysOfReadings(given: Readings): { record: DailyRecord; daysWithRow: number } {
  const readings = inOrder(given);
  const { minute } = readings;
  const count = minute.length;
  if (count === 0) return { record: emptyRecord(0, 0), daysWithRow: 0 };
  const step = medianStep(minute);
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < count; at++) {
    first = Math.min(first, minute[at]!);
    last = Math.max(last, minute[at]!);
  }
  const firstDay = Math.floor(first / dayMinutes);
  const days = Math.floor(last / dayMinutes) - firstDay + 1;
  const record = emptyRecord(firstDay, days);

  const dayOf = new Int32Array(count);
  const dayOfAmount = new Int32Array(count);
  const hasRow = new Uint8Array(days);
  for (let at = 0; at < count; at++) {
    dayOf[at] = Math.floor(minute[at]! / dayMinutes) - firstDay;
    dayOfAmount[at] = Math.floor((minute[at]! - step / 2) / dayMinutes) - firstDay;
    hasRow[dayOf[at]!] = 1;
  }
  const needed = neededShare * (dayMinutes / step) - 1e-9;
  const put = (field: RecordField, values: Float64Array, counts: Int32Array) => {
    for (let day = 0; day < days; day++) {
      if (counts[day]! < needed) continue;
      record[field][day] = values[day]!;
      record.known[field][day] = 1;
    }
  };

  const least = readings.tempC ?? readings.tempMinC;
  const most = readings.tempC ?? readings.tempMaxC;
  if (least !== null) put('tempMinC', ...gather(least, dayOf, days, Number.POSITIVE_INFINITY, Math.min));
  if (most !== null) put('tempMaxC', ...gather(most, dayOf, days, Number.NEGATIVE_INFINITY, Math.max));
  if (readings.rainDayMm !== null) {
    put('rainMm', ...gather(amountsOfDayCounter(readings.rainDayMm, dayOf), dayOf, days, 0, sum));
  } else if (readings.rainMm !== null) {
    put('rainMm', ...gather(readings.rainMm, dayOfAmount, days, 0, sum));
  } else if (readings.rainSumMm !== null) {
    put('rainMm', ...gather(amountsOfSumCounter(readings.rainSumMm), dayOfAmount, days, 0, sum));
  }
  const energy = readings.solarMJ ?? energyOf(readings.solarW, minute, step);
  if (energy !== null) putSun(record, energy, dayOfAmount, needed);
  let daysWithRow = 0;
  for (const has of hasRow) daysWithRow += has;
  return { record, daysWithRow };
}

const sum = (a: number, b: number) => a + b;

/** What the values of each day come to, and how many there are. Those before the first day are passed over. */
function gather(
  values: Float64Array,
  dayOf: Int32Array,
  days: number,
  start: number,
  join: (a: number, b: number) => number,
): [Float64Array, Int32Array] {
  const gathered = new Float64Array(days).fill(start);
  const counts = new Int32Array(days);
  for (let at = 0; at < values.length; at++) {
    const day = dayOf[at]!;
    const value = values[at]!;
    if (day < 0 || Number.isNaN(value)) continue;
    gathered[day] = join(gathered[day]!, value);
    counts[day]!++;
  }
  return [gathered, counts];
}

function energyOf(power: Float64Array | null, minute: Float64Array, step: number): Float64Array | null {
  if (power === null) return null;
  return power.map((watts, at) => {
    const since = minute[at]! - (minute[at - 1] ?? Number.NaN);
    // what came before a gap is not known
    const minutes = since > 0 && since <= 2 * step ? since : step;
    return (Math.max(0, watts) * minutes * 60) / 1e6;
  });
}

/** Sun of each day, of which most readings are there, or all from dark to dark: some stations write none at night. */
function putSun(record: DailyRecord, energy: Float64Array, dayOf: Int32Array, needed: number): void {
  const { days } = record;
  const [sums, counts] = gather(
    energy.map((value) => Math.max(0, value)),
    dayOf,
    days,
    0,
    sum,
  );
  const firsts = new Float64Array(days);
  const lasts = new Float64Array(days);
  const mosts = new Float64Array(days);
  /** Turns from known to unknown and back: a day from dark to dark has one run. */
  const runs = new Int32Array(days);
  let before = -1;
  for (let at = 0; at < energy.length; at++) {
    const day = dayOf[at]!;
    const value = energy[at]!;
    if (day < 0 || Number.isNaN(value)) {
      before = -1;
      continue;
    }
    if (before !== day) {
      if (runs[day] === 0) firsts[day] = value;
      runs[day]!++;
    }
    lasts[day] = value;
    mosts[day] = Math.max(mosts[day]!, value);
    before = day;
  }
  for (let day = 0; day < days; day++) {
    const isFromDark = Math.max(firsts[day]!, lasts[day]!) <= darkShare * mosts[day]!;
    const isWhole = runs[day] === 1 && isFromDark && mosts[day]! > 0 && counts[day]! >= needed / 3;
    if (counts[day]! < needed && !isWhole) continue;
    record.solarMJ[day] = sums[day]!;
    record.known.solarMJ[day] = 1;
  }
}

/** Median of the steps between readings, minutes; a reading alone is taken for one of a day. */
function medianStep(minute: Float64Array): number {
  const steps = new Float64Array(Math.max(0, minute.length - 1));
  let count = 0;
  for (let at = 1; at < minute.length; at++) {
    const step = minute[at]! - minute[at - 1]!;
    if (step > 0) steps[count++] = step;
  }
  if (count === 0) return dayMinutes;
  const sorted = steps.subarray(0, count).sort();
  return Math.min(dayMinutes, sorted[Math.floor(count / 2)]!);
}

const quantities = [
  'tempC',
  'tempMinC',
  'tempMaxC',
  'rainMm',
  'rainDayMm',
  'rainSumMm',
  'solarW',
  'solarMJ',
] as const;

/** Earliest first, and each once; as they stand where only clocks were set back. */
function inOrder(readings: Readings): Readings {
  const { minute } = readings;
  const order = orderOf(minute);
  const isKept = (at: number, before: number) => before < 0 || !isSame(readings, at, before);
  let isAsGiven = true;
  const kept: number[] = [];
  for (let place = 0; place < minute.length; place++) {
    const at = order === null ? place : order[place]!;
    if (isKept(at, kept.at(-1) ?? -1)) kept.push(at);
    else isAsGiven = false;
  }
  if (order === null && isAsGiven) return readings;
  const take = (values: Float64Array) => {
    const taken = new Float64Array(kept.length);
    for (let place = 0; place < kept.length; place++) taken[place] = values[kept[place]!]!;
    return taken;
  };
  const taken: Readings = { ...readings, minute: take(minute) };
  for (const name of quantities) taken[name] = readings[name] === null ? null : take(readings[name]!);
  return taken;
}

/** Null where the order is that of time already, but for clocks set back; a sort keeps those of one stamp in order. */
function orderOf(minute: Float64Array): number[] | null {
  let forward = 0;
  let backward = 0;
  let isJumping = false;
  for (let at = 1; at < minute.length; at++) {
    const step = minute[at]! - minute[at - 1]!;
    if (step > 0) forward++;
    else if (step < 0) backward++;
    if (step < -clockChange) isJumping = true;
  }
  if (!isJumping && forward >= backward) return null;
  const order = Array.from(minute, (_, at) => at);
  // latest first: so are those of one stamp
  if (backward > forward) order.reverse();
  return order.sort((a, b) => minute[a]! - minute[b]!);
}

/** Whether two readings are one that was written twice. */
function isSame(readings: Readings, a: number, b: number): boolean {
  if (readings.minute[a] !== readings.minute[b]) return false;
  return quantities.every(
    (name) => readings[name] === null || Object.is(readings[name][a], readings[name][b]),
  );
}
