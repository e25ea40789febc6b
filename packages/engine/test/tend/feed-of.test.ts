import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber, formatDay } from '../../src/calendar/index.ts';
import { onionTypes, startMethods } from '../../src/plant/index.ts';
import { openSite, type Plan, planDefaults, runPlan, type Site } from '../../src/season/index.ts';
import { feedOf, type Ground, groundUnsaid, type TendedCrop } from '../../src/tend/index.ts';
import { site as britain, noted, plan as sets } from '../learn/a-season.ts';
import { climateOf } from '../weather/climates.ts';

function cropOf(
  plan: Plan,
  ground: Partial<Ground> = {},
  other: Partial<TendedCrop> = {},
  site = britain,
): TendedCrop {
  return {
    site,
    plan,
    summary: runPlan(site, plan),
    ground: { ...groundUnsaid, ...ground },
    observations: [],
    today: plan.startDay,
    liftedOn: null,
    ...other,
  };
}

const placed = (latitudeDeg: number, mean: number[] | number): Site =>
  openSite({ climate: climateOf({ latitudeDeg, mean }), years: 5, seed: 1 });
const places = {
  britain,
  lyon: placed(46, [3, 4, 8, 11, 15, 19, 21, 21, 17, 12, 7, 4]),
  georgia: placed(32, [10, 12, 15, 19, 23, 26, 28, 27, 25, 20, 15, 11]),
  limpopo: placed(-24, [23, 23, 22, 19, 16, 13, 13, 15, 19, 21, 22, 23]),
  dakota: placed(47, [-11, -8, -2, 7, 14, 19, 22, 21, 15, 8, -1, -8]),
  equator: placed(0, 25),
};

test('no feed on or after the first day bulbs may begin, whatever the plan', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...Object.values(places)),
      fc.constantFrom(...startMethods),
      fc.constantFrom(...onionTypes),
      fc.integer({ min: 0, max: 364 }),
      fc.constantFrom('sand' as const, 'loam' as const),
      fc.constantFrom('10-10-10', '46-0-0', 'blood-meal', 'feather-meal', 'compost'),
      fc.double({ min: 0.5, max: 12, noNaN: true }),
      (site, start, type, day, soil, feedProduct, aimKgPerM2) => {
        const plan = { ...planDefaults, start, type, soil, startDay: dayNumber(2027, 1, 1) + day } as Plan;
        const answer = feedOf(cropOf(plan, { feedProduct }, {}, site), { aimKgPerM2 });
        const { feeds, stopBy } = answer;
        for (const feed of feeds) if (stopBy !== null) expect(feed.day).toBeLessThan(stopBy);
        const days = feeds.map((feed) => feed.day);
        expect(days).toEqual([...days].sort((a, b) => a - b));
        expect(feeds.map(({ number }) => number)).toEqual(feeds.map((_, at) => at + 1));
        const fed = feeds.reduce((sum, { nGPerM2 }) => sum + nGPerM2, 0);
        expect(fed + answer.leftOutGPerM2).toBeCloseTo(answer.toGiveGPerM2);
        for (const { nGPerM2 } of feeds) expect(nGPerM2).toBeGreaterThan(0);
      },
    ),
    { seed: 1, numRuns: 150 },
  );
});

describe('a crop of sets', () => {
  const plain = feedOf(cropOf(sets, { areaM2: 4 }));

  test('aims at what a well-fed crop gives, unless told', () => {
    expect(plain.aimKgPerM2).toBe(runPlan(britain, sets).totalKgM2.p50);
    expect(feedOf(cropOf(sets), { aimKgPerM2: 2.5 }).aimKgPerM2).toBe(2.5);
  });

  test('is fed for its bed', () => {
    expect(plain.feeds.length).toBeGreaterThan(1);
    for (const { gramsPerM2, gramsForBed, nGPerM2 } of plain.feeds) {
      expect(gramsPerM2).toBeCloseTo(10 * nGPerM2);
      expect(gramsForBed).toBeCloseTo(4 * gramsPerM2);
    }
    expect(feedOf(cropOf(sets)).feeds[0].gramsForBed).toBeNull();
  });

  test('gets before planting and by its leaves what soil, compost and legume do not give', () => {
    const [first, second] = plain.feeds;
    expect(first).toMatchObject({ stage: 'before-start', day: sets.startDay });
    expect(second.stage).toMatch(/^leaves-\d$/);
    const rich = feedOf(cropOf(sets, { compostKgPerM2: 3, afterLegume: true }));
    expect(rich.fromBed).toEqual({ soil: 4, compost: 3, legume: 3 });
    expect(rich.toGiveGPerM2).toBeCloseTo(plain.toGiveGPerM2 - 6);
  });

  test('is told what its bag brings beside nitrogen', () => {
    const { besides, toGiveGPerM2 } = feedOf(cropOf(sets, { feedProduct: '10-4-8' }));
    expect(besides?.phosphateGPerM2).toBeCloseTo(0.4 * toGiveGPerM2);
    expect(besides?.potashGPerM2).toBeCloseTo(0.8 * toGiveGPerM2);
    expect(feedOf(cropOf(sets, { feedProduct: 'blood-meal' })).besides).toBeNull();
  });
});

describe('what was fed', () => {
  const fedOn = (day: number, fedG: number) => noted(day, { fedProduct: '10-10-10', fedG });
  const at = sets.startDay;
  const plain = feedOf(cropOf(sets, { areaM2: 4 }));
  const whole = plain.feeds[0].gramsForBed!;
  const after = (...of: ReturnType<typeof noted>[]) =>
    feedOf(cropOf(sets, { areaM2: 4 }, { observations: of, today: at + 10 }));

  test('is taken off what is still to be given, the first feed first', () => {
    const answer = after(fedOn(at, 1.5 * whole));
    expect(answer.givenGPerM2).toBeCloseTo((1.5 * whole) / 40);
    expect(answer.feeds.map(({ day }) => formatDay(day))).toEqual(
      plain.feeds.map(({ day }) => formatDay(day)),
    );
    expect(answer.feeds[0].gramsPerM2).toBe(0);
    expect(answer.feeds[1].gramsForBed).toBeCloseTo(0.5 * whole);
  });

  test('leaves nothing to give once it was enough, and never less', () => {
    for (const { nGPerM2 } of after(fedOn(at, 100 * whole)).feeds) expect(nGPerM2).toBe(0);
  });

  test('counts only up to today, and nitrogen alone', () => {
    const later = after(fedOn(at + 11, whole), noted(at, { fedProduct: '0-20-20', fedG: 500 }));
    expect(later.givenGPerM2).toBe(0);
    expect(later.feeds).toEqual(plain.feeds);
  });

  test('can not be told on an area that is not known', () => {
    const answer = feedOf(cropOf(sets, {}, { observations: [fedOn(at, 100)], today: at }));
    expect(answer.givenGPerM2).toBeNull();
    expect(answer.toGiveGPerM2).toBeCloseTo(plain.toGiveGPerM2);
  });
});

describe('a season of its own kind', () => {
  test('plants that make no bulbs get little and no stop', () => {
    const plan = {
      ...planDefaults,
      type: 'northern-long',
      start: 'direct-seed',
      startDay: dayNumber(2027, 3, 1),
    };
    const { stopBy, feeds, aimKgPerM2 } = feedOf(
      cropOf(plan as Plan, { fertility: 'poor' }, {}, places.equator),
    );
    expect(stopBy).toBeNull();
    expect(aimKgPerM2).toBe(1.5);
    expect(feeds.length).toBeGreaterThan(0);
    expect(feeds.length).toBeLessThanOrEqual(2);
  });

  test('a crop that stands over winter is fed from spring on', () => {
    const plan = { ...sets, start: 'direct-seed', startDay: dayNumber(2027, 8, 20) } as Plan;
    const { feeds, stopBy } = feedOf(cropOf(plan));
    expect(feeds.length).toBeGreaterThan(1);
    expect(formatDay(feeds[0].day) > '2028-02-01').toBe(true);
    expect(feeds[0].stage).not.toBe('before-start');
    expect(stopBy).not.toBeNull();
  });

  test('bought plants come with leaves and get fewer feeds than sets of the same days', () => {
    const bought = feedOf(cropOf({ ...sets, start: 'bought-transplants' } as Plan)).feeds;
    expect(bought.length).toBeLessThan(feedOf(cropOf(sets)).feeds.length);
  });

  test('a garden file that names a product nobody knows is answered with the usual bag', () => {
    expect(feedOf(cropOf(sets, { feedProduct: 'what was left' }))).toMatchObject({
      product: '10-10-10',
      productSaid: 'what was left',
    });
  });
});
