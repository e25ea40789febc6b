import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import {
  noDraw,
  openSite,
  type Plan,
  planDefaults,
  runPlan,
  type Site,
  type SpanPart,
  spanParts,
} from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const mean = [4, 5, 7, 10, 13, 16, 18, 18, 15, 11, 7, 4];
const climate = climateOf({ latitudeDeg: 52, mean });
const open = (years = 20): Site => openSite({ climate, years, seed: 1 });
const plan = {
  ...planDefaults,
  type: 'northern-long',
  start: 'bought-transplants',
  startDay: dayNumber(2027, 4, 12),
} as const;
const partsAt = (site: Site, of: Plan = plan) => spanParts(site, runPlan(site, of));
/** The same years without anything unknown of the kind. */
const known = (site: Site): Site => ({
  ...site,
  draws: () => Array.from({ length: site.years }, () => noDraw),
});

describe('the parts of a span', () => {
  it('make the span of the answer, to the day', () => {
    const site = open();
    const { neckFall, bulbDiameterMm } = runPlan(site, plan);
    const { neckFallDays, bulbDiameterMm: mm } = partsAt(site);
    expect(neckFallDays?.all).toBe(neckFall.days!.p90 - neckFall.days!.p10);
    expect(mm?.all).toBeCloseTo(bulbDiameterMm!.p90 - bulbDiameterMm!.p10, 9);
  });

  it('add up by their squares', () => {
    const { neckFallDays, bulbDiameterMm } = partsAt(open());
    for (const { all, weather, kind } of [neckFallDays, bulbDiameterMm] as SpanPart[]) {
      expect(weather).toBeGreaterThan(0);
      expect(kind).toBeGreaterThan(0);
      expect(Math.hypot(weather, kind)).toBeCloseTo(all, 9);
    }
  });

  it('are all weather where the kind is known to the hour', () => {
    const site = known(open());
    const { neckFallDays, bulbDiameterMm } = partsAt(site);
    // ends are whole days in the answer
    expect(Math.abs(neckFallDays!.weather - neckFallDays!.all)).toBeLessThanOrEqual(1);
    expect(bulbDiameterMm!.kind).toBeCloseTo(0, 6);
  });

  it('leave the site as it was', () => {
    const site = open();
    const before = runPlan(site, plan);
    spanParts(site, before);
    expect(runPlan(site, plan)).toEqual(before);
  });

  it('are null where tops mostly stay up, and from years too few to have ends', () => {
    const autumn = {
      ...plan,
      startDay: dayNumber(2027, 9, 1),
      type: 'northern-long',
      start: 'sets',
    } as const;
    const tropics = openSite({ climate: climateOf({ latitudeDeg: 5, mean: 26 }), years: 12, seed: 1 });
    expect(partsAt(tropics, autumn)).toEqual({ neckFallDays: null, bulbDiameterMm: null });
    expect(partsAt(open(4))).toEqual({ neckFallDays: null, bulbDiameterMm: null });
    expect(partsAt(open(5)).neckFallDays).not.toBeNull();
  });
});
