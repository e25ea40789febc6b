import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { harvester, harvestOf } from '../../src/choice/harvest.ts';
import { onionTypes, startMethods } from '../../src/plant/index.ts';
import { openSite, planDefaults, referenceBulbG, runnerOf, summarise } from '../../src/season/index.ts';
import { emptyOutcome, type Outcome, stage } from '../../src/season/outcome.ts';
import { climateOf } from '../weather/climates.ts';

test('what the search goes by is what a summary of the same seasons says', () => {
  const mean = [4, 5, 7, 10, 13, 16, 19, 19, 16, 11, 7, 4];
  const site = openSite({ climate: climateOf({ latitudeDeg: 47, mean }), years: 7, seed: 3 });
  fc.assert(
    fc.property(
      fc.constantFrom(...onionTypes),
      fc.constantFrom(...startMethods),
      fc.integer({ min: dayNumber(2027, 1, 1), max: dayNumber(2027, 12, 31) }),
      (type, start, startDay) => {
        const plan = { ...planDefaults, type, start, startDay };
        const runner = runnerOf(site, plan);
        const direct = harvester(site, plan, runner, referenceBulbG(site, plan))();
        const summary = harvestOf(site, summarise(site, plan, runner));
        expect(direct.goodShare).toBe(summary.goodShare);
        expect(direct.boltedShare).toBe(summary.boltedShare);
        expect(direct.dryG).toBeCloseTo(summary.dryG, 9);
        expect(direct.days).toBe(summary.days);
      },
    ),
    { numRuns: 60, seed: 20270503 },
  );
});

describe('the harvest of stated seasons', () => {
  const site = openSite({ climate: climateOf({ latitudeDeg: 47, mean: 12 }), years: 5, seed: 1 });
  const plan = {
    ...planDefaults,
    type: 'northern-long',
    start: 'direct-seed',
    startDay: dayNumber(2027, 3, 20),
  } as const;
  const ripe = { ...emptyOutcome(), reached: stage.fallen, fellOn: 150, bulbDryG: 14 };
  const seasons: Outcome[] = [
    ripe,
    { ...ripe, fellOn: 141, boltedShare: 0.1 },
    { ...ripe, fellOn: 148, bulbDryG: 3 },
    { ...ripe, reached: stage.onset, fellOn: 0, bulbDryG: 9, boltedShare: 0.05 },
    { ...ripe, reached: stage.started, fellOn: 0, bulbDryG: 0, boltedShare: 0.9 },
  ];
  const runner = { ...runnerOf(site, plan), quickSeason: (year: number) => seasons[year] };
  const harvest = harvester(site, plan, runner, 13);

  test('has the shares of good and of small seasons', () => {
    expect(harvest()).toMatchObject({ goodShare: 0.4, smallShare: 0.2 });
  });

  test('has the middle of the plants that stood, the bulbs that started and the tops that fell', () => {
    const { boltedShare, dryG, days } = harvest();
    expect(boltedShare).toBeCloseTo(0.025, 12);
    expect(dryG).toBe((14 + 9) / 2);
    expect(days).toBe(148);
  });

  test('of some of the years is that of the first', () => {
    expect(harvest(2)).toMatchObject({ goodShare: 1, smallShare: 0, dryG: 14, days: 146 });
    expect(harvest()).toMatchObject({ goodShare: 0.4, days: 148 });
  });

  test('where nothing came up is none', () => {
    const never = { ...runner, quickSeason: () => seasons[4] };
    expect(harvester(site, plan, never, 13)()).toMatchObject({
      goodShare: 0,
      boltedShare: 0,
      dryG: 0,
      days: null,
    });
  });
});
