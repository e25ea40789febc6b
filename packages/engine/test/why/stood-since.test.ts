import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { civilDate, dayNumber, lastSuchDay, latestStart, mostSymptoms, symptoms } from '../../src/index.ts';

const anyDay = fc.integer({ min: dayNumber(1960, 1, 1), max: dayNumber(2080, 1, 1) });

describe('when a crop was started of which something was seen', () => {
  test('a thing seen in store needs a longer stand than one seen at harvest, and that than one seen growing', () => {
    const today = dayNumber(2027, 9, 20);
    const [growing, harvest, store] = (['dry-tips', 'small', 'sprouted'] as const).map((symptom) =>
      latestStart([symptom], today),
    );
    expect(growing).toBeLessThan(today);
    expect(harvest).toBeLessThan(growing);
    expect(store).toBeLessThan(harvest);
    expect(latestStart([], today)).toBe(growing);
  });

  test('all that was seen has had its time', () => {
    const seen = fc.uniqueArray(fc.constantFrom(...symptoms), { minLength: 1, maxLength: mostSymptoms });
    fc.assert(
      fc.property(seen, anyDay, (told, today) => {
        for (const one of told)
          expect(latestStart(told, today)).toBeLessThanOrEqual(latestStart([one], today));
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  test('the last day like it is within a year before, on the same day of its month', () => {
    fc.assert(
      fc.property(anyDay, anyDay, (like, latest) => {
        const found = lastSuchDay(like, latest);
        expect(found).toBeLessThanOrEqual(latest);
        expect(found).toBeGreaterThan(latest - 367);
        const [then, now] = [civilDate(like), civilDate(found)];
        expect(now.month).toBe(then.month);
        const isLeapDay = then.month === 2 && then.day === 29;
        expect(isLeapDay ? [28, 29] : [then.day]).toContain(now.day);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });
});
