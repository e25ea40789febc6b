import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soilTextures, wateringWays } from '../../src/bed/index.ts';
import { startMethods } from '../../src/plant/index.ts';
import { topsBeginDays, unnotedDays, type WaterDay, waterOf } from '../../src/tend/index.ts';
import { cropOn, dryClimate, startDay } from './a-crop.ts';

const asked = { efficiency: null, days: false };
const withDays = { efficiency: null, days: true };
const dry = { climate: dryClimate };
const sum = (days: WaterDay[], of: (day: WaterDay) => number) =>
  days.reduce((total, day) => total + of(day), 0);

describe('the account of a bed', () => {
  const someCrop = fc.record({
    on: fc.integer({ min: -20, max: 160 }),
    soil: fc.constantFrom(...soilTextures),
    start: fc.constantFrom(...startMethods),
    water: fc.constantFrom('watered' as const, 'rain' as const),
    watering: fc.constantFrom(...wateringWays),
    waterSaltDsPerM: fc.constantFrom(null, 0.5, 3),
    isDry: fc.boolean(),
    seen: fc.array(
      fc.record({ on: fc.integer({ min: 0, max: 160 }), wateredLitres: fc.integer({ min: 0, max: 60 }) }),
      { maxLength: 6 },
    ),
    areaM2: fc.constantFrom(null, 1.5),
  });

  test('closes: what goes in stays short, goes through the crop, off the ground, below or beside', () => {
    fc.assert(
      fc.property(someCrop, ({ on, soil, start, water, watering, waterSaltDsPerM, isDry, seen, areaM2 }) => {
        const site = { years: 2, ...(isDry ? dry : {}) };
        const ground = { watering, waterSaltDsPerM, areaM2 };
        const { days } = waterOf(
          cropOn(on, {
            site,
            plan: { soil, start, water },
            ground,
            seen: seen.filter((one) => one.on <= on),
          }),
          withDays,
        );
        let before = 0;
        for (const day of days) {
          const filled = before - day.depletionMm;
          const { rainMm, givenMm, besideMm, transpiredMm, evaporatedMm, drainedMm } = day;
          expect(rainMm + givenMm - besideMm - transpiredMm - evaporatedMm - drainedMm).toBeCloseTo(
            filled,
            9,
          );
          for (const part of Object.values(day)) expect(part).toBeGreaterThanOrEqual(-1e-9);
          before = day.depletionMm;
        }
      }),
      { seed: 85, numRuns: 25 },
    );
  });

  test('is never short of more than roots draw without thirst while it is filled when due', () => {
    const { days } = waterOf(cropOn(-5, { site: dry }), withDays);
    expect(days.length).toBeGreaterThan(80);
    days.slice(1).forEach((day, at) => {
      const morning = days[at].depletionMm;
      expect(day.givenMm > 0, `day ${at + 1}`).toBe(morning > day.readilyAvailableMm);
    });
  });

  test('loses less from bare ground by drip than by the can', () => {
    const from = (watering: 'can' | 'drip') =>
      waterOf(cropOn(-5, { site: dry, ground: { watering } }), withDays);
    expect(from('drip').efficiency).toBe(0.9);
    expect(from('drip').seasonMm!.need.p50).toBeLessThan(0.8 * from('can').seasonMm!.need.p50);
  });
});

describe('the water of today', () => {
  const inJune = { site: dry, seen: [{ on: 70, wateredLitres: 60 }], ground: { areaM2: 2, flowLPerH: 600 } };

  test('is what the days without rain or can have taken since', () => {
    // 30 l on every m² fill a bed that may lack 20; a fortnight of a dry June empties it again
    const fresh = waterOf(cropOn(71, inJune), asked).today!;
    const thirsty = waterOf(cropOn(85, inJune), asked).today!;
    expect(fresh.waterNow).toBe(false);
    expect(fresh.depletionMm).toBeLessThan(8);
    expect(thirsty.waterNow).toBe(true);
    expect(thirsty.depletionMm).toBeGreaterThan(thirsty.readilyAvailableMm);
  });

  test('counts what was given the same day, several cans together', () => {
    const cans = [20, 20, 20].map((wateredLitres) => ({ on: 85, wateredLitres }));
    const before = waterOf(cropOn(85, inJune), asked);
    const after = waterOf(cropOn(85, { ...inJune, seen: [...inJune.seen, ...cans] }), asked);
    const given = (60 / 2) * 0.75;
    expect(after.today!.depletionMm).toBeLessThanOrEqual(Math.max(0, before.today!.depletionMm - given) + 6);
    expect(after.next.days!.p50).toBeGreaterThan(startDay + 85);
    expect(before.next.days!.p50).toBe(startDay + 85);
  });

  test('fills the bed with what runs beside; litres go with the area, minutes with the flow', () => {
    const { today } = waterOf(cropOn(85, inJune), asked);
    const { depletionMm, litresPerM2, litresForBed, minutes } = today!;
    expect(litresPerM2).toBeCloseTo(depletionMm / 0.75, 9);
    expect(litresForBed).toBeCloseTo(2 * litresPerM2, 9);
    expect(minutes).toBeCloseTo((litresForBed! / 600) * 60, 9);
    const own = waterOf(cropOn(85, inJune), { efficiency: 1, days: false }).today!;
    expect(own.litresPerM2).toBeCloseTo(own.depletionMm, 9);
    const unknown = waterOf(cropOn(85, { site: dry }), asked).today!;
    expect(unknown.litresForBed).toBeNull();
    expect(unknown.minutes).toBeNull();
  });

  test('is told neither before the crop is in its bed, nor when its tops fall, nor once it is lifted', () => {
    expect(waterOf(cropOn(-3), asked).today).toBeNull();
    const stop = waterOf(cropOn(60), asked).stop.days!;
    expect(waterOf(cropOn(stop.p90 - startDay + 5), asked).today).toBeNull();
    const lifted = waterOf(cropOn(100, { liftedOn: 90 }), asked);
    expect(lifted.today).toBeNull();
    expect(lifted.next).toEqual({ share: 0, days: null });
  });

  test('ends when tops begin to fall, before half of them lie', () => {
    const crop = cropOn(60);
    const { stop } = waterOf(crop, asked);
    expect(stop.share).toBe(crop.summary.neckFall.share);
    expect(stop.days!.p50).toBe(crop.summary.neckFall.days!.p50 - topsBeginDays);
  });
});

describe('who notes no watering', () => {
  test('is taken to have watered when it was due until the last few days', () => {
    const crop = cropOn(90, { site: dry });
    const { assumed, days } = waterOf(crop, withDays);
    expect(assumed).toEqual(['watered-when-due']);
    const lately = days.filter(({ day }) => day > crop.today - unnotedDays && day < crop.today);
    expect(lately).toHaveLength(unnotedDays - 1);
    expect(sum(lately, ({ givenMm }) => givenMm)).toBe(0);
    const before = days.filter(({ day }) => day <= crop.today - unnotedDays);
    expect(sum(before, ({ givenMm }) => givenMm)).toBeGreaterThan(50);
  });

  test('is believed from the first note on', () => {
    const { assumed, days } = waterOf(
      cropOn(90, { site: dry, ground: { areaM2: 2 }, seen: [{ on: 60, wateredLitres: 50 }] }),
      withDays,
    );
    expect(assumed).toEqual(['watered-till-noted']);
    const noted = days.filter(
      ({ day, givenMm }) => day >= startDay + 60 && day < startDay + 90 && givenMm > 0,
    );
    expect(noted.map(({ day, givenMm }) => [day, givenMm])).toEqual([[startDay + 60, 25]]);
  });

  test('has filled the bed with each note where its size is not known', () => {
    const crop = cropOn(61, { site: dry, seen: [{ on: 60, wateredLitres: 1 }] });
    const { assumed, days } = waterOf(crop, withDays);
    expect(assumed).toContain('noted-filled');
    expect(days.find(({ day }) => day === startDay + 60)!.depletionMm).toBeLessThan(9);
  });

  test('and says that rain is all, has given nothing', () => {
    const { assumed, days, seasonMm, today } = waterOf(
      cropOn(90, { site: dry, plan: { water: 'rain' } }),
      withDays,
    );
    expect(assumed).toEqual([]);
    expect(
      sum(
        days.filter(({ day }) => day < startDay + 90),
        ({ givenMm }) => givenMm,
      ),
    ).toBe(0);
    expect(today!.waterNow).toBe(true);
    expect(seasonMm!.need.p50).toBeGreaterThan(seasonMm!.given.p50);
  });
});

describe('the water of a season', () => {
  test('is more in a dry year, and more again where it is dry', () => {
    const [wet, arid] = [waterOf(cropOn(-5), asked), waterOf(cropOn(-5, { site: dry }), asked)];
    for (const { seasonMm } of [wet, arid]) {
      expect(seasonMm!.need.p90).toBeGreaterThan(seasonMm!.need.p50);
      expect(seasonMm!.given).toEqual(seasonMm!.need);
    }
    expect(arid.seasonMm!.need.p10).toBeGreaterThan(wet.seasonMm!.need.p90);
    expect(arid.seasonMm!.rain.p90).toBeLessThan(wet.seasonMm!.rain.p10);
  });

  test('is that of its days in the middle season', () => {
    const { seasonMm, days } = waterOf(cropOn(-5, { site: { years: 13 } }), withDays);
    expect(sum(days, ({ givenMm }) => givenMm)).toBeCloseTo(seasonMm!.need.p50, 9);
    expect(days[0].day).toBe(startDay);
  });

  test('of raised seedlings begins when they stand in their bed', () => {
    const crop = cropOn(-5, { plan: { start: 'raised-seedlings' } });
    const { days } = waterOf(crop, withDays);
    // raised in trays for weeks, each season in its own
    expect(days[0].day).toBeGreaterThan(startDay + 14);
    expect(Math.abs(days[0].day - crop.summary.plantOut!.days!.p50)).toBeLessThan(15);
  });

  test('with salt in the water is more, by what washes it out', () => {
    const [fresh, salty] = [0, 3].map((waterSaltDsPerM) =>
      waterOf(cropOn(-5, { site: dry, ground: { waterSaltDsPerM } }), asked),
    );
    expect(fresh.salt).toEqual({ yieldShare: 1, leachingShare: 0 });
    expect(salty.salt!.leachingShare).toBeCloseTo(0.15, 12);
    expect(salty.salt!.yieldShare).toBeLessThan(0.6);
    expect(waterOf(cropOn(-5), asked).salt).toBeNull();
  });

  test('is unknown where no onion ever comes to stand', () => {
    const polar = cropOn(-5, {
      site: { climate: { ...dryClimate, tempMeanC: new Float64Array(12).fill(-15) } },
    });
    const { seasonMm, today, next, stop, days } = waterOf(polar, withDays);
    expect([seasonMm, today, next.days, stop.days]).toEqual([null, null, null, null]);
    expect(days).toEqual([]);
  });
});
