import {
  type DateSpread,
  dayNumber,
  type KeepLot,
  type KeepYear,
  planDefaults,
  type SeasonSummary,
  type StartMethod,
} from '../../../engine/src/index.ts';

const spread = (p50: number) => ({ p10: p50 - 10, p50, p90: p50 + 10 });
const on = (year: number, month: number, day: number): DateSpread => ({
  share: 1,
  days: spread(dayNumber(year, month, day)),
});

type Told = { names: string[]; month: number; plants: number; ready: DateSpread; lastsUntil: DateSpread };

function lot(start: StartMethod, { names, month, plants, ready, lastsUntil }: Told): KeepLot {
  const plan = {
    ...planDefaults,
    type: 'northern-long',
    traits: null,
    start,
    startDay: dayNumber(2027, month, 25),
  };
  const isSeed = start === 'direct-seed' || start === 'raised-seedlings';
  return {
    kind: {
      names,
      type: 'northern-long',
      traits: null,
      start,
      keepsMonths: [5, 8],
      keepsFrom: 'type',
      likes: [],
    },
    plan,
    summary: {
      years: 30,
      emergedShare: 0.8,
      boltedPlantsShare: start === 'sets' ? spread(0.14) : null,
      seasonShares: { good: 0.8, 'not-ripe': start === 'direct-seed' ? 0.2 : 0 },
    } as unknown as SeasonSummary,
    likes: ['keeper'],
    bedM2: plants / 40,
    need: {
      plants,
      seeds: isSeed ? 2 * plants : null,
      sets: start === 'sets' ? plants : null,
      bundles: start === 'bought-transplants' ? Math.ceil(plants / 60) : null,
      trayCells: start === 'raised-seedlings' ? plants : null,
      compostL: start === 'raised-seedlings' ? plants * 0.04 : null,
      rowM: plants / 10,
    },
    ready,
    lastsUntil,
  } as unknown as KeepLot;
}

const august = on(2027, 8, 20);
export const sets = lot('sets', {
  names: ['Sturon'],
  month: 3,
  plants: 80,
  ready: august,
  lastsUntil: on(2028, 3, 10),
});
export const trays = lot('raised-seedlings', {
  names: ['Red Baron'],
  month: 2,
  plants: 100,
  ready: august,
  lastsUntil: on(2028, 5, 20),
});
export const sown = lot('direct-seed', {
  names: ['Bedfordshire Champion'],
  month: 3,
  plants: 60,
  ready: on(2027, 9, 20),
  lastsUntil: { share: 0, days: null },
});
export const bought = lot('bought-transplants', {
  names: ['Ailsa Craig'],
  month: 4,
  plants: 70,
  ready: { share: 0, days: null },
  lastsUntil: { share: 0, days: null },
});

/** A kitchen's year made up for its sentences. */
export function keepYearWith(changes: Partial<KeepYear>): KeepYear {
  return {
    household: { people: 4, gramsPerWeek: 900, store: 'cellar', likes: [], seedAge: null },
    lots: [sets, trays],
    bedM2: 4.5,
    months: [],
    suppliedYearsShare: 0.9,
    gaps: [
      {
        from: dayNumber(2028, 6, 1),
        to: dayNumber(2028, 6, 30),
        mostly: null,
        closedBy: ['overwintered', 'green-onions'],
      },
    ],
    unmetLikes: [],
    taught: null,
    years: 30,
    seed: 1,
    ...changes,
  };
}
