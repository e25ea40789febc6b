import { describe, expect, it } from 'vitest';
import {
  adjustedDepletionShare,
  availableMmPerM,
  nextDepletion,
  onionCropCoefficient,
  onionReadilyShare,
  onionRootDepthM,
  type SoilTexture,
  soils,
  soilTextures,
  totalAvailableMm,
  waterStress,
} from '../../src/bed/index.ts';
import fao from './fao56.json' with { type: 'json' };
import { expectNear } from './printed.ts';

const { examples } = fao;

describe('root-zone water (FAO-56 chapter 8)', () => {
  it('example 36: water for onion, tomato and maize on three soils', () => {
    const { inputs, expected, tolerance } = examples.ex36;
    for (const crop of ['onion', 'tomato', 'maize'] as const) {
      for (const soil of ['loamy_sand', 'silt', 'silty_clay'] as const) {
        const [fieldCapacity, wiltingPoint] = inputs.soils[soil];
        const total = totalAvailableMm(1000 * (fieldCapacity - wiltingPoint), inputs.crops[crop].Zr);
        const [totalPrinted, readilyPrinted] = expected[crop][soil];
        expectNear(total, totalPrinted, tolerance.mm);
        expectNear(inputs.crops[crop].p * total, readilyPrinted, tolerance.mm);
        expect(waterStress(readilyPrinted - tolerance.mm, total, inputs.crops[crop].p)).toBe(1);
      }
    }
    expect(onionRootDepthM(13)).toBe(inputs.crops.onion.Zr);
    expect(onionReadilyShare('loam')).toBe(inputs.crops.onion.p);
  });

  it('example 37: ten days without water', () => {
    const { inputs: i, expected, tolerance } = examples.ex37;
    const total = totalAvailableMm(1000 * (i.theta_FC - i.theta_WP), i.Zr_m);
    let depletion = i.Dr0_mm;
    for (let day = 0; day < expected.Ks.length; day++) {
      const stress = waterStress(depletion, total, i.p);
      expectNear(stress, expected.Ks[day], tolerance.Ks);
      depletion = nextDepletion(depletion, 0, stress * i.Kc * i.ETo, total);
      expectNear(depletion, expected.Dr_end[day], tolerance.Dr_end);
    }
  });

  it('example 38: ten days with rain and irrigation', () => {
    const { inputs: i, expected, tolerance } = examples.ex38;
    let depletion = i.Dr0_mm;
    for (let day = 0; day < expected.Dr_end_mm.length; day++) {
      const total = totalAvailableMm(1000 * (i.theta_FC - i.theta_WP), i.Zr_m[day]);
      expectNear(i.p * total, expected.RAW_mm[day], 0.6);
      depletion = nextDepletion(depletion, i.rain_mm[day] + i.I_mm[day], i.ETc_mm[day], total);
      expectNear(depletion, expected.Dr_end_mm[day], tolerance.Dr_end_mm);
    }
  });

  it('tables 12 and 22: dry onion', () => {
    const { Kc, p, Zr_m } = fao.onionDry;
    expect(onionCropCoefficient(0, 0)).toBe(Kc.ini);
    expect(onionCropCoefficient(0.9, 0.2)).toBe(Kc.mid);
    expect(onionCropCoefficient(0.9, 1)).toBeCloseTo(Kc.end, 12);
    expect(adjustedDepletionShare(p, 5)).toBe(onionReadilyShare('silt'));
    expect(onionRootDepthM(20)).toBeGreaterThanOrEqual(Zr_m[0]);
    expect(onionRootDepthM(20)).toBeLessThanOrEqual(Zr_m[1]);
  });

  it('table 19: soils', () => {
    expect([...soilTextures]).toEqual(Object.keys(fao.table19_available));
    for (const [texture, range] of Object.entries(fao.table19_available)) {
      expect(soils[texture as SoilTexture].availableWater).toEqual(range);
      expect(availableMmPerM(texture as SoilTexture)).toBeGreaterThan(1000 * range[0]);
      expect(availableMmPerM(texture as SoilTexture)).toBeLessThan(1000 * range[1]);
    }
  });
});
