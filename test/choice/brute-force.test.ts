import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Choice,
  chooseKinds,
  type Kind,
  onionTypes,
  openSite,
  rankChoices,
  startMethods,
  worth,
} from '../../packages/engine/src/index.ts';
import { climateOf, isCovered } from '../season/places.ts';
import { asGoodWithin, bestOfAll, bruteForce, firstDay } from './brute-force.ts';

const points = fc.sample(
  fc
    .tuple(fc.integer({ min: -550, max: 660 }), fc.integer({ min: -1800, max: 1799 }))
    .map(([lat, lon]) => [lat / 10, lon / 10] as const)
    .filter(([lat, lon]) => isCovered(lat, lon)),
  { numRuns: 20, seed: 7 },
);

const sites = points.map(([lat, lon], at) => {
  const site = openSite({ climate: climateOf(lat, lon), years: 20, seed: 1 });
  const start = startMethods[at % startMethods.length];
  const kinds = onionTypes.map(
    (type): Kind => ({ names: [type], type, traits: null, start, keepsMonths: [4, 6], keepsFrom: 'type' }),
  );
  const found = chooseKinds(site, kinds, firstDay) ?? [];
  const all = rankChoices(site, bruteForce(site, kinds, firstDay, 7));
  return { site, found, all };
});

/** Where nothing makes a crop, what comes first means nothing. */
const hopeful = sites.filter(({ all }) => all[0].summary.outcome === 'good');

const isLeader = (choices: readonly Choice[], { kind }: Choice) =>
  choices.some((choice) => choice.kind === kind && choice.rank === 1);

describe('at twenty places drawn at random, against every week of the year on every weather year', () => {
  test('enough of them grow onions', () => {
    expect(hopeful.length).toBeGreaterThan(12);
  });

  test('the same kinds lead', () => {
    for (const { found, all } of hopeful) {
      expect(isLeader(all, found[0])).toBe(true);
      expect(isLeader(found, all[0])).toBe(true);
    }
  });

  test('the leader starts in a week as good as the best', () => {
    for (const { found, all } of hopeful) {
      const same = all.find(({ kind }) => kind === found[0].kind) as Choice;
      expect(found[0].worth).toBeGreaterThan(same.worth - asGoodWithin);
    }
  });

  test('trying every day instead finds the same date to within a week, or one that is as good', () => {
    const off = hopeful.slice(0, 6).map(({ site, found: [{ kind, summary }] }) => {
      const daily = bestOfAll(site, kind, firstDay, 1);
      // among days worth the same as the best, any is as good
      const isAsGood = worth(site, summary) >= worth(site, daily) - asGoodWithin;
      return { days: Math.abs(summary.plan.startDay - daily.plan.startDay), isAsGood };
    });
    expect(off.filter(({ days, isAsGood }) => days > 7 && !isAsGood)).toEqual([]);
  });
});
