import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { harvester, harvestOf } from '../../src/choice/harvest.ts';
import { onionTypes, startMethods } from '../../src/plant/index.ts';
import { openSite, planDefaults, referenceBulbG, runnerOf, summarise } from '../../src/season/index.ts';
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
