import { describe, expect, test } from 'vitest';
import { neckfall, testDay } from '../../packages/cli/test/run-neckfall.ts';
import { siteAt } from '../../packages/data/src/index.ts';
import { readSiteAssets } from '../../packages/data/src/node.ts';
import {
  formatDay,
  type OnionType,
  parseDay,
  planDefaults,
  runPlan,
  type Spread,
  type StartMethod,
} from '../../packages/engine/src/index.ts';

const assets = readSiteAssets();

/** Flat land, a valley whose elevation is guessed, a height that is given, the southern half of the Earth. */
const places = [
  { at: '52.1,5.2', latitudeDeg: 52.1, longitudeDeg: 5.2, class: 'long', start: 'sets', date: '2027-03-25' },
  {
    at: '46.2,7.4',
    latitudeDeg: 46.2,
    longitudeDeg: 7.4,
    class: 'long',
    start: 'raised-seedlings',
    date: '2027-02-20',
  },
  {
    at: '19.9,73.8,560',
    latitudeDeg: 19.9,
    longitudeDeg: 73.8,
    elevationM: 560,
    class: 'short',
    start: 'bought-transplants',
    date: '2027-12-10',
  },
  {
    at: '-41.5,173.9',
    latitudeDeg: -41.5,
    longitudeDeg: 173.9,
    class: 'intermediate',
    start: 'direct-seed',
    date: '2027-08-20',
  },
] as const;

const dates = (days: Spread | null) =>
  days && { p10: formatDay(days.p10), p50: formatDay(days.p50), p90: formatDay(days.p90) };

describe('siteAt opens the site of the commands', () => {
  test.each(places)('at $at', ({ at, class: name, start, date, ...point }) => {
    const asked = [`--at=${at}`, '--class', name, '--start', start, '--date', date, '--today', testDay];
    const { stdout } = neckfall('season', ...asked, '--json');
    const document = JSON.parse(stdout);
    const plan = {
      ...planDefaults,
      type: document.plan.type as OnionType,
      start: start as StartMethod,
      startDay: parseDay(date)!,
    };
    const site = siteAt(assets, point);
    const summary = runPlan(site, plan);

    expect(Math.round(site.climate.elevationM)).toBe(document.place.elevationM);
    expect(document.neckFall).toMatchObject(dates(summary.neckFall.days) ?? {});
    expect(document.onset).toMatchObject(dates(summary.onset.days) ?? {});
    expect(document.seasonShares.good).toBeCloseTo(summary.seasonShares.good, 3);
    expect(document.bulbDiameterMm?.p50).toBeCloseTo(summary.bulbDiameterMm!.p50, 2);
    expect(document.totalKgM2.p90).toBeCloseTo(summary.totalKgM2.p90, 2);
  });
});
