import { planFields } from '@neckfall/engine';
import * as v from 'valibot';

/** Parts that the documents share. All numbers are SI, the unit in the name. */
export const fullDate = v.pipe(v.string(), v.regex(/^\d{4}-\d{2}-\d{2}$/));
export const monthDay = v.pipe(v.string(), v.regex(/^\d{2}-\d{2}$/));
export const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
export const positive = v.pipe(v.number(), v.minValue(0));

const number = v.nullable(v.number());

/** 1, 5 and 9 seasons in 10 lie below; null where the thing happened in none. */
export const range = v.object({ p10: number, p50: number, p90: number });

const dates = (date: typeof fullDate) => ({
  p10: v.nullable(date),
  p50: v.nullable(date),
  p90: v.nullable(date),
  share,
});

/** Percentiles over the seasons in which the day came, and the share of those seasons. */
export const dateRange = v.object(dates(fullDate));
export const monthDayRange = v.object(dates(monthDay));
export const onsetRange = v.object({ ...dates(fullDate), sunUpH: number, photoperiodH: number });

export const dayLengthClass = v.picklist(['short', 'intermediate', 'long']);
export const onionType = v.picklist([
  'tropical-short',
  'short',
  'intermediate',
  'early-long',
  'northern-long',
]);
export const startMethod = v.picklist(['direct-seed', 'raised-seedlings', 'bought-transplants', 'sets']);
export const verdict = v.picklist(['good', 'small', 'no-bulb', 'bolts', 'winter-killed', 'not-ripe']);

export const seasonShares = v.object({
  good: share,
  small: share,
  noBulb: share,
  bolts: share,
  winterKilled: share,
  notRipe: share,
});

const sentence = v.pipe(v.string(), v.minLength(1));

/** What every document begins with. */
export const head = {
  engine: v.pipe(v.string(), v.regex(/^\d+\.\d+\.\d+/)),
  place: v.object({
    name: v.nullable(v.string()),
    country: v.nullable(v.pipe(v.string(), v.length(2))),
    near: v.nullable(v.object({ name: v.string(), country: v.string(), distanceKm: positive })),
    latitudeDeg: v.pipe(v.number(), v.minValue(-60), v.maxValue(72)),
    longitudeDeg: v.pipe(v.number(), v.minValue(-180), v.maxValue(180)),
    elevationM: v.number(),
    timeZone: v.string(),
  }),
  assumed: v.array(sentence),
  warnings: v.array(sentence),
  sources: v.array(sentence),
  years: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(200)),
  seed: v.pipe(v.number(), v.integer()),
};

/** Options as used; null where an option has no part in this way of starting. */
export const practice = {
  densityPerM2: v.number(),
  setSizeMm: v.nullable(v.number()),
  setStore: v.nullable(v.picklist(planFields.setStore.words)),
  cover: v.picklist(planFields.cover.words),
  sunHours: v.nullable(v.number()),
  water: v.picklist(planFields.water.words),
  soil: v.string(),
  nurseryTempC: v.nullable(v.number()),
  lampHours: v.nullable(v.number()),
};
