import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adjustedDepletionShare,
  effectiveRainMm,
  nextDepletion,
  onionCropCoefficient,
  onionReadilyShare,
  onionRootDepthM,
  soilTextures,
  waterStress,
} from '../../src/bed/index.ts';

const mm = (max: number) => fc.double({ min: 0, max, noNaN: true });
const share = fc.double({ min: 0.1, max: 0.8, noNaN: true });
const unit = fc.double({ min: 0, max: 1, noNaN: true });

describe('root-zone water', () => {
  it('is lost to the crop and to drainage alone', () => {
    fc.assert(
      fc.property(mm(120), mm(80), mm(10), unit, (total, rain, cropEt, dryness) => {
        const before = dryness * total;
        const after = nextDepletion(before, rain, cropEt, total);
        const drained = Math.max(0, rain - before);
        const balance = before - rain + drained + cropEt;
        return after >= 0 && after <= total && Math.abs(after - Math.min(total, balance)) < 1e-9;
      }),
      { seed: 82 },
    );
  });

  it('stresses the crop the more the drier it is, from none to full', () => {
    fc.assert(
      fc.property(mm(120), share, unit, unit, (total, readily, a, b) => {
        const wetter = waterStress(Math.min(a, b) * total, total, readily);
        const drier = waterStress(Math.max(a, b) * total, total, readily);
        return wetter <= 1 && drier >= 0 && wetter >= drier;
      }),
      { seed: 84 },
    );
    expect(waterStress(0, 0, 0.3)).toBe(1);
    expect(waterStress(50, 50, 0.3)).toBe(0);
    // Roots may come to a shallower bed than the water left it in.
    expect(waterStress(60, 50, 0.3)).toBe(0);
  });

  it('can run dry only where nobody waters', () => {
    let watered = 0;
    let rainFed = 0;
    for (let day = 0; day < 60; day++) {
      watered = nextDepletion(watered, watered > 18 ? watered : 0, 5 * waterStress(watered, 62, 0.3), 62);
      rainFed = nextDepletion(rainFed, 0, 5 * waterStress(rainFed, 62, 0.3), 62);
    }
    expect(waterStress(watered, 62, 0.3)).toBeGreaterThan(0.8);
    expect(waterStress(rainFed, 62, 0.3)).toBeLessThan(0.1);
  });

  it('is drawn less easily where evaporation is strong', () => {
    // FAO-56 table 22: p + 0.04 (5 − ETc), between 0.1 and 0.8.
    expect(adjustedDepletionShare(0.3, 5)).toBe(0.3);
    expect(adjustedDepletionShare(0.3, 8)).toBeCloseTo(0.18, 12);
    expect(adjustedDepletionShare(0.3, 2)).toBeCloseTo(0.42, 12);
    expect(adjustedDepletionShare(0.3, 20)).toBe(0.1);
  });

  it('gains nothing from a sprinkle', () => {
    expect(effectiveRainMm(0.9, 5)).toBe(0);
    expect(effectiveRainMm(1.1, 5)).toBe(1.1);
  });
});

describe('water need of onions', () => {
  it('stays within the FAO-56 coefficients and never jumps', () => {
    fc.assert(
      fc.property(unit, unit, (cover, ripening) => {
        const kc = onionCropCoefficient(cover, ripening);
        const next = onionCropCoefficient(cover + 0.01, ripening + 0.01);
        return kc >= 0.7 - 1e-12 && kc <= 1.05 + 1e-12 && Math.abs(next - kc) < 0.011;
      }),
      { seed: 12 },
    );
  });

  it('has roots that only go down', () => {
    let depth = 0;
    for (let leaves = 0; leaves <= 16; leaves += 0.25) {
      expect(onionRootDepthM(leaves)).toBeGreaterThanOrEqual(depth);
      depth = onionRootDepthM(leaves);
    }
    expect(depth).toBe(0.4);
  });

  it('draws more easily on sand than on clay', () => {
    expect(onionReadilyShare('sand')).toBeGreaterThan(onionReadilyShare('loam'));
    expect(onionReadilyShare('clay')).toBeLessThan(onionReadilyShare('loam'));
    for (const texture of soilTextures)
      expect(Math.abs(onionReadilyShare(texture) / 0.3 - 1)).toBeLessThan(0.1);
  });
});
