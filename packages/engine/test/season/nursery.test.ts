import { describe, expect, test } from 'vitest';
import { bulbMassG } from '../../src/plant/index.ts';
import type { Crop } from '../../src/season/crop.ts';
import { emptySeedling, raise, type Seedling } from '../../src/season/nursery.ts';
import type { PlanForm } from '../../src/season/plan.ts';
import { roundGrowth, type SteadyDay, steadyAir, steadyCrop, steadyPlan } from './steady-bed.ts';

type Nursery = {
  open?: Partial<SteadyDay>;
  covered?: Partial<SteadyDay>;
  photoperiodH?: number | Float64Array;
  nurseryTempC?: number | null;
  plantOutAfter?: number | null;
  crop?: Partial<Crop>;
};
function raised(plan: Partial<PlanForm>, nursery: Nursery = {}, seedling = emptySeedling()): Seedling {
  const { open = {}, covered = open, photoperiodH = 12, nurseryTempC = 15, plantOutAfter = null } = nursery;
  const hours = typeof photoperiodH === 'number' ? new Float64Array(800).fill(photoperiodH) : photoperiodH;
  raise(
    { ...steadyPlan, ...plan },
    steadyCrop(plan, nursery.crop),
    steadyAir(open),
    steadyAir(covered),
    0,
    hours,
    0,
    nurseryTempC,
    plantOutAfter,
    seedling,
  );
  return seedling;
}

describe('a bought plant', () => {
  const bought = raised({ start: 'bought-transplants' });

  test('stands in its bed on the day it is planted, with the leaves and mass it came with', () => {
    expect(bought).toMatchObject({ emerged: true, emergedOn: 0, emergedShare: 1, day: 0 });
    expect(bought.plant).toMatchObject({ leaves: 4, green: 4, shootG: 0.5, bulbing: 0, coldDays: 0 });
  });

  test('is as old as its leaves: three slow ones and a common one', () => {
    expect(bought.plant.age).toBe(3 * 150 + 100);
    const draw = { criticalShiftH: 0, ripeningFactor: 1, phyllochronFactor: 1.2, growthFactor: 1 };
    expect(raised({ start: 'bought-transplants' }, { crop: { draw } }).plant.age).toBeCloseTo(660, 9);
  });

  test('has yet to root, and is as hard as the air of the day', () => {
    expect(bought.plant.rootingTT).toBe(200);
    expect(raised({ start: 'bought-transplants' }, { open: { tempMeanC: 6 } }).plant.recentC).toBe(6);
  });
});

describe('seed sown in its bed', () => {
  test('comes up when the soil has given enough, and a quarter is lost to crusts and pests', () => {
    // 100 °C d of 13 a day; 98 % normal seedlings at 15 °C (Harrington & Minges 1954), three quarters of them (memory)
    const sown = raised({ start: 'direct-seed' });
    expect(sown).toMatchObject({ emerged: true, emergedOn: 8, day: 8 });
    expect(sown.emergedShare).toBeCloseTo(0.98 * 0.75, 12);
    expect(sown.plant).toMatchObject({ leaves: 0, age: 0, rootingTT: 0, shootG: 0.00227, coldPace: 1 });
  });

  test('comes up sooner under a cover, and hardly at all in hot soil', () => {
    expect(raised({ start: 'direct-seed', cover: 'fleece' }, { covered: { soilTT: 25 } }).day).toBe(4);
    expect(raised({ start: 'direct-seed' }, { open: { soilMeanC: 40 } }).emergedShare).toBeCloseTo(
      0.02 * 0.75,
      12,
    );
  });

  test('never comes up in a frozen bed', () => {
    expect(raised({ start: 'direct-seed' }, { open: { soilTT: 0 } })).toMatchObject({
      emerged: false,
      day: 300,
    });
  });

  test('leaves nothing of the plant that stood there before', () => {
    const seedling = raised({ start: 'sets', setSizeMm: 30 });
    expect(raised({ start: 'direct-seed' }, {}, seedling)).toEqual(raised({ start: 'direct-seed' }));
  });
});

describe('a set', () => {
  test('sprouts by warmth, with its leaves, old enough to bulb and rooted', () => {
    const set = raised({ start: 'sets' });
    // 60 °C d of 10 a day
    expect(set).toMatchObject({ emerged: true, emergedOn: 6, day: 6, emergedShare: 1 });
    expect(set.plant).toMatchObject({
      leaves: 2,
      green: 2,
      age: 500,
      shootG: 0.8,
      rootingTT: 0,
      coldPace: 0.1,
    });
  });

  test('weighs as much more as it is wider', () => {
    expect(raised({ start: 'sets', setSizeMm: 24 }).plant.shootG).toBeCloseTo(0.8 * 1.5, 12);
    expect(bulbMassG(24) / bulbMassG(16)).toBeCloseTo(1.5 ** 3, 12);
  });

  test('never sprouts in the cold', () => {
    expect(raised({ start: 'sets' }, { open: { leafTT: 0 } }).emerged).toBe(false);
  });

  describe('brings cold from its store', () => {
    // half of 21.5 mm flower, half a logit for each mm (slope: Sapporo 1949–50); spread 5 d
    const coldOf = (plan: Partial<PlanForm>, photoperiodH: number | Float64Array = 12) =>
      raised({ start: 'sets', ...plan }, { photoperiodH }).plant;

    test('the more the larger it is', () => {
      expect(coldOf({ setSizeMm: 21.5 }).coldDays).toBeCloseTo(40, 12);
      expect(coldOf({ setSizeMm: 23.5 }).coldDays).toBeCloseTo(45, 12);
      expect(coldOf({ setSizeMm: 21.5 }).storeColdDays).toBeCloseTo(40, 12);
    });

    test('from a warm store next to none (Heath 1943)', () => {
      expect(coldOf({ setSizeMm: 21.5, setStore: 'warm' }).coldDays).toBeCloseTo(40 - 35, 12);
    });

    test('none to speak of where it was lifted that summer', () => {
      const shortening = Float64Array.from(
        { length: 800 },
        (_, day) => 12 + 3 * Math.cos((2 * Math.PI * (day + 60)) / 365),
      );
      const lengthening = Float64Array.from(
        { length: 800 },
        (_, day) => 12 - 3 * Math.cos((2 * Math.PI * (day + 60)) / 365),
      );
      expect(coldOf({ setSizeMm: 21.5 }, shortening).coldDays).toBeCloseTo(5, 12);
      expect(coldOf({ setSizeMm: 21.5 }, lengthening).coldDays).toBeCloseTo(40, 12);
    });
  });

  test('dies in ground colder than −8 °C, but not under deep snow (memory)', () => {
    // the ground of the first night is at −9 °C: a quarter
    const frozen = { tempMinC: -14, soilMeanC: -4, tempMeanC: -8, leafTT: 60 };
    expect(raised({ start: 'sets' }, { open: frozen }).plant.aliveShare).toBeCloseTo(0.75, 12);
    expect(raised({ start: 'sets' }, { open: { ...frozen, soilMeanC: -2 } }).plant.aliveShare).toBe(1);
    // two nights of which the second lies under 80 mm of snow
    const snowed = { ...frozen, leafTT: 30, rainMm: 80 };
    expect(raised({ start: 'sets' }, { open: snowed }).plant.aliveShare).toBeCloseTo(0.75, 12);
  });
});

describe('a raised seedling', () => {
  const start = 'raised-seedlings';

  test('comes up in the warmth of its tray, one in ten lost', () => {
    const tray = raised({ start });
    // 13 °C above the base of 2 °C
    expect(tray.emergedOn).toBe(8);
    expect(tray.emergedShare).toBeCloseTo(0.98 * 0.9, 12);
    expect(raised({ start }, { nurseryTempC: 22 }).emergedOn).toBe(5);
  });

  test('makes leaves by the warmth of its tray, slower as trays fill', () => {
    // the first day 10 of 150 °C d, the second a little less
    const after = (days: number) => raised({ start }, { plantOutAfter: days }).plant;
    expect(after(9).leaves).toBeCloseTo(10 / 150, 12);
    expect(after(9).age).toBeCloseTo(10, 12);
    expect(after(10).leaves).toBeCloseTo(10 / 150 + (10 / 150) * (1 - (10 / 150 / 4) ** 2), 12);
  });

  test('gains a hundredth of its mass a degree and day while it is small', () => {
    // 9 °C above the base of 6 °C
    const { plant } = raised({ start }, { open: { usedLight: 30 }, plantOutAfter: 9 });
    expect(plant.shootG).toBeCloseTo(0.00227 * 1.09, 12);
  });

  test('lives on half of the light under glass, by 1000 on a square metre, and on lamps', () => {
    // dull days, so that light limits: caught by half a square centimetre of 1000 plants, 0.5 · 0.05 deep
    const caught = 1 - Math.exp(-0.5 * 0.5 * 1000 * 1e-4);
    const grams = (light: number) => 0.00227 + (light * caught) / 1000;
    const first = (plan: Partial<PlanForm>) =>
      raised({ start, ...plan }, { open: { usedLight: 1 }, plantOutAfter: 9 });
    expect(first({}).plant.shootG).toBeCloseTo(grams(0.5), 9);
    // an hour of lamps is worth a quarter of an MJ (memory)
    expect(first({ lampHours: 1 }).plant.shootG).toBeCloseTo(grams(0.75), 9);
  });

  test('goes out with two and a half leaves', () => {
    const { day, plant } = raised({ start });
    expect(day).toBeLessThan(84);
    expect(plant.leaves).toBeGreaterThanOrEqual(2.5);
    expect(plant.leaves).toBeLessThan(2.6);
    expect(plant.rootingTT).toBe(200);
  });

  test('goes out after twelve weeks if it is smaller', () => {
    const { day, plant } = raised({ start }, { nurseryTempC: 6 });
    expect(day).toBe(84);
    expect(plant.leaves).toBeLessThan(2.5);
  });

  test('waits for a bed of 7 °C', () => {
    expect(raised({ start }, { open: { tempMeanC: 6.9 } }).day).toBe(300);
    expect(raised({ start }, { open: { tempMeanC: 7 } }).day).toBeLessThan(84);
  });

  test('goes out on the day that is planned, whatever it has come to', () => {
    expect(raised({ start }, { plantOutAfter: 20 }).day).toBe(20);
    expect(raised({ start }, { plantOutAfter: 100, open: { tempMeanC: 2 } }).day).toBe(100);
  });

  test('that never came up is none', () => {
    expect(raised({ start }, { nurseryTempC: 2, plantOutAfter: 60 })).toMatchObject({ emerged: false });
  });

  test('meets cold outdoors and none indoors', () => {
    const big = { boltingSizeG: 0.0001 };
    const type = { ...steadyCrop().type, ...big };
    const cold = (nurseryTempC: number | null) =>
      raised({ start }, { nurseryTempC, open: { cold: 0.5 }, crop: { type }, plantOutAfter: 11 }).plant
        .coldDays;
    expect(cold(15)).toBe(0);
    // up after eight days, then three days of half a cold day each
    expect(cold(null)).toBeCloseTo(1.5, 12);
  });

  describe('starts its bulb in the tray', () => {
    const growth = { ...roundGrowth, competenceTT: 50 };
    const type = { ...steadyCrop().type, minimumLeaves: 0.1 };
    const after = (plantOutAfter: number, plan: Partial<PlanForm>, photoperiodH: number) =>
      raised({ start, ...plan }, { photoperiodH, plantOutAfter, crop: { growth, type } }).plant.bulbing;

    test('under long lamps or long days, when it is of age', () => {
      expect(after(40, { lampHours: 16 }, 10)).toBeGreaterThan(0);
      expect(after(40, {}, 16)).toBeGreaterThan(0);
      expect(after(40, {}, 12)).toBe(0);
      expect(after(40, { lampHours: 12 }, 16)).toBe(0);
      expect(after(10, { lampHours: 16 }, 10)).toBe(0);
    });

    test('and loses it day by day when days are short again', () => {
      const shortFrom20 = Float64Array.from({ length: 800 }, (_, day) => (day < 20 ? 16 : 12));
      // two thirds of the rate at 15 °C: gains 0.1 and loses 0.05 a day
      const slow = { ...growth, bulbingRate: 0.15 };
      const on = (plantOutAfter: number) =>
        raised({ start }, { photoperiodH: shortFrom20, plantOutAfter, crop: { growth: slow, type } }).plant
          .bulbing;
      expect(on(20)).toBeGreaterThan(0.2);
      expect(on(20) - on(24)).toBeCloseTo(4 * 0.05, 12);
    });

    test('and goes on in the bed from just short of it', () => {
      expect(after(80, { lampHours: 16 }, 10)).toBe(0.99);
    });
  });
});
