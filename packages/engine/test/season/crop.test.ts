import { describe, expect, test } from 'vitest';
import { defaultPlantValues } from '../../src/plant/index.ts';
import { cropOf } from '../../src/season/crop.ts';
import type { Plan } from '../../src/season/plan.ts';
import { termsOf } from '../../src/season/terms.ts';
import { roundGrowth, roundType, steadyAir, steadyCrop, steadyPlan } from './steady-bed.ts';

describe('a set', () => {
  const leaf = (setSizeMm: number) => steadyCrop({ start: 'sets', setSizeMm }).areaTotals[1];

  test('has leaves as much larger as it is wider, up to 21 mm (Sapporo 1949–50)', () => {
    // the power is 1 here
    expect(leaf(20) / leaf(16)).toBeCloseTo(20 / 16, 12);
    expect(leaf(21) / leaf(16)).toBeCloseTo(21 / 16, 12);
    expect(leaf(30)).toBe(leaf(21));
  });

  test('has large leaves sooner than seed, and ripens by its own factor', () => {
    expect(leaf(16)).toBeGreaterThan(steadyCrop().areaTotals[1]);
    expect(steadyCrop({ start: 'sets' }).ripeningFactor).toBe(0.9);
    expect(steadyCrop().ripeningFactor).toBe(1);
  });
});

test('plants that are moved have to root, others have not', () => {
  const rooting = (start: Plan['start']) => steadyCrop({ start }).rootingTT;
  expect([rooting('raised-seedlings'), rooting('bought-transplants')]).toEqual([200, 200]);
  expect([rooting('direct-seed'), rooting('sets')]).toEqual([0, 0]);
});

describe('a bed in shade', () => {
  // a longest day of 16 h; the sky gives three tenths of the light (memory)
  test('gets its share of the sun and all of the sky', () => {
    expect(steadyCrop({ sunHours: 8 }).lightShare).toBeCloseTo(0.3 + 0.35, 12);
    expect(steadyCrop({ sunHours: 0 }).lightShare).toBeCloseTo(0.3, 12);
    expect(steadyCrop({ sunHours: 20 }).lightShare).toBeCloseTo(1, 12);
    expect(steadyCrop({ sunHours: null }).lightShare).toBeCloseTo(1, 12);
  });

  test('asks for longer days beyond a quarter of shade', () => {
    expect(steadyCrop({ sunHours: 8 }).shadePenaltyH).toBeCloseTo(2.4 * 0.1, 12);
    expect(steadyCrop({ sunHours: 12 }).shadePenaltyH).toBe(0);
  });
});

test('a dense stand ripens sooner than one of 40 plants per m²', () => {
  expect(steadyCrop({ densityPerM2: 40 }).densityHaste).toBe(1);
  expect(steadyCrop({ densityPerM2: 40 * Math.E }).densityHaste).toBeCloseTo(1.1, 12);
});

test('a loam holds 155 mm a metre, of which three tenths are drawn without stress (FAO-56, tables 19 and 22)', () => {
  expect(cropOf(steadyPlan, defaultPlantValues, 16)).toMatchObject({
    availableMmPerM: 155,
    readilyShare: 0.3,
  });
});

describe('a draw of the kind', () => {
  const draw = { criticalShiftH: 0.3, ripeningFactor: 1.2, phyllochronFactor: 1.1, growthFactor: 1 };
  const crop = steadyCrop({ start: 'sets', sunHours: 8 }, { draw });
  const type = { ...roundType, competenceShare: 0.7 };
  const air = steadyAir();
  const terms = termsOf({ ...crop, type }, air, air, 0, new Float64Array(1), 0, 0);

  test('shifts the day length needed, as shade does', () => {
    expect(terms.criticalH).toBeCloseTo(14 + 0.3 + 0.24, 12);
  });

  test('stretches leaves and age by one factor, ripening by another', () => {
    expect(terms.phyllochron).toBeCloseTo(1.1 * roundGrowth.phyllochron, 12);
    expect(terms.competenceTT).toBeCloseTo(500 * 0.7 * 1.1, 9);
    expect(terms.ripeningTT).toBeCloseTo(800 * 1.2 * 0.9, 9);
  });
});
