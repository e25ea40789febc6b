import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Household,
  type KeepYear,
  keepingCurve,
  keepYearOf,
  type LookedAt,
  noStoreDraw,
  openSite,
  parseDay,
  storeClimateOf,
  usualLifted,
} from '../../packages/engine/src/index.ts';
import { kitchens } from './places.ts';

const today = parseDay('2027-01-10')!;
const places = kitchens().map((kitchen) => ({
  ...kitchen,
  site: openSite({ climate: kitchen.climate, years: 30, seed: 1 }),
}));
const [south, north] = places;

const planned = ({ site, kinds, household }: (typeof places)[number], said: Partial<Household>): KeepYear =>
  keepYearOf(site, kinds, { ...household, ...said }, today);
const gramsOf = (people: number) => ({ people, gramsPerWeek: 172 * people });
const bareDays = ({ gaps }: KeepYear) => gaps.reduce((sum, { from, to }) => sum + to - from + 1, 0);

describe('a kitchen’s year', () => {
  test.each(places.map((place) => [place.name, place] as const))('adds up at %s', (_, place) => {
    const year = planned(place, {});
    const { lots, months } = year;
    expect(lots.reduce((sum, { bedM2 }) => sum + bedM2, 0)).toBeCloseTo(year.bedM2, 3);
    expect(year.suppliedYearsShare).toBeGreaterThanOrEqual(0.8);
    expect(year.suppliedYearsShare).toBeLessThanOrEqual(1);
    expect(months).toHaveLength(12);
    expect(months.reduce((sum, { needKg }) => sum + needKg, 0)).toBeCloseTo(36, 0);
    for (const { storeKg, lotsKg, lostKg, suppliedShare } of months) {
      expect(suppliedShare).toBeGreaterThanOrEqual(0);
      expect(suppliedShare).toBeLessThanOrEqual(1);
      expect(storeKg.p10).toBeGreaterThanOrEqual(0);
      expect(storeKg.p90).toBeGreaterThanOrEqual(storeKg.p50);
      expect(lostKg).toBeGreaterThanOrEqual(0);
      expect(lotsKg).toHaveLength(lots.length);
    }
    for (const { need, plan, ready, lastsUntil } of lots) {
      expect(need.seeds !== null).toBe(plan.start === 'direct-seed' || plan.start === 'raised-seedlings');
      expect(need.sets !== null).toBe(plan.start === 'sets');
      expect(need.bundles !== null).toBe(plan.start === 'bought-transplants');
      expect(lastsUntil.days!.p50).toBeGreaterThan(ready.days!.p50);
    }
  });

  test('takes no less bed for more people, and about in step with them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 }), (one, other) => {
        const [few, many] = [Math.min(one, other), Math.max(one, other)].map((people) =>
          planned(north, gramsOf(people)),
        );
        expect(many.bedM2).toBeGreaterThanOrEqual(few.bedM2 - 1e-9);
        const each = (year: KeepYear) => year.bedM2 / year.household.people;
        expect(each(many) / each(few)).toBeGreaterThan(0.6);
        expect(each(many) / each(few)).toBeLessThan(1.5);
      }),
      { seed: 15, numRuns: 8 },
    );
  });

  test.each([
    ['south', south],
    ['north', north],
  ])('is bare no longer with a better store, in the %s', (_, place) => {
    const bare = [2, 8, 16].map((tempC) => bareDays(planned(place, { store: { tempC, humidityPct: 67 } })));
    expect(bare[0]).toBeLessThanOrEqual(bare[1]);
    expect(bare[1]).toBeLessThanOrEqual(bare[2]);
    expect(bare[0]).toBeLessThan(bare[2]);
  });

  test('starts today what is still in time, and waits a year for nothing that is', () => {
    const { site, kinds, household } = north;
    const trayDay = (day: number) =>
      keepYearOf(site, kinds, household, day).lots.find(({ plan }) => plan.start === 'raised-seedlings')?.plan
        .startDay;
    const best = trayDay(today) as number;
    expect(best).toBeGreaterThan(today);
    expect(trayDay(best + 10)).toBe(best + 10);
    // by midsummer the year has gone by
    for (const { plan } of keepYearOf(site, kinds, household, best + 100).lots)
      if (plan.start === 'raised-seedlings') expect(plan.startDay).toBeGreaterThan(best + 300);
  });

  test('goes by what looks have taught of the store', () => {
    const { household, kinds, site } = north;
    const store = storeClimateOf(site.climate, household.store);
    const lot = { keepsMonths: [5, 7] as const, ...usualLifted };
    const looksAt = (sprouting: number): LookedAt => {
      const curve = keepingCurve(lot, store, 240, { ...noStoreDraw, sprouting });
      const checks = [100, 200].map((day, at) => {
        const since = at === 0 ? 0 : 100;
        const found = (of: Float64Array) => Math.round(200 * (of[day] - of[since]));
        return {
          day,
          sound: Math.round(200 * curve.sound[day]),
          isSoundCounted: true,
          sprouted: found(curve.sprouted),
          rotten: found(curve.rotten),
          massShare: null,
        };
      });
      return { lot, store, liftedOn: 240, checks };
    };
    const [early, late] = [1.5, 0.65].map((sprouting) =>
      keepYearOf(site, kinds, household, today, {}, [looksAt(sprouting)]),
    );
    expect(early.taught?.sproutingPace).toBeGreaterThan(1);
    expect(late.taught?.sproutingPace).toBeLessThan(1);
    expect(late.taught?.looks).toBe(2);
    expect(bareDays(late)).toBeLessThan(bareDays(early));
    expect(keepYearOf(site, kinds, household, today, {}, []).taught).toBeNull();
  });

  test('has a lot for each want that can be had, and names the others', () => {
    const likes = ['keeper', 'red', 'green'] as const;
    const { lots, unmetLikes } = planned(north, { likes });
    for (const like of likes)
      expect(unmetLikes.includes(like) || lots.some((lot) => lot.likes.includes(like))).toBe(true);
    // pulled green too, it is a kind that shops of the north have
    const green = lots.find((lot) => lot.likes.includes('green'));
    expect(green?.plan.type).toMatch(/long|intermediate/);
    const kinds = north.kinds.filter((kind) => !kind.likes.includes('red'));
    expect(planned({ ...north, kinds }, { likes }).unmetLikes).toContain('red');
  });

  test('tells of each gap what closes it, and that it can be bought last', () => {
    const { gaps } = planned(north, {});
    expect(gaps.length).toBeGreaterThan(0);
    for (const { closedBy } of gaps) expect(closedBy.at(-1)).toBe('bought');
    // the hungry gap of the north lies before the first onions are lifted
    expect(gaps.flatMap(({ closedBy }) => closedBy)).toContain('green-onions');
  });
});
