import { describe, expect, test } from 'vitest';
import { growDay } from '../../src/season/grow-day.ts';
import { emptyOutcome } from '../../src/season/outcome.ts';
import { plantOf, steadyCrop, steadyTerms } from './steady-bed.ts';

describe('a cover', () => {
  // thermal time of leaves tells which air a plant stood in
  const ageGained = (
    day: number,
    { tempMinC = 10, cover = 'fleece' as 'fleece' | 'none', beddedOn = 30 } = {},
  ) => {
    const plant = plantOf({ age: 0 });
    const terms = steadyTerms({
      crop: steadyCrop({ cover }),
      open: { tempMinC },
      covered: { tempMinC, leafTT: 17 },
      beddedOn,
    });
    growDay(plant, terms, day, emptyOutcome());
    return plant.age;
  };

  test('lies on for six weeks from the day on which the plant stands in its bed', () => {
    expect(ageGained(30 + 41)).toBe(17);
    expect(ageGained(30 + 42)).toBe(10);
    expect(ageGained(30 + 42, { beddedOn: 31 })).toBe(17);
  });

  test('lies on again on frosty nights', () => {
    expect(ageGained(200, { tempMinC: -0.1 })).toBe(17);
    expect(ageGained(200, { tempMinC: 0 })).toBe(10);
  });

  test('is none where none is planned', () => {
    expect(ageGained(35, { tempMinC: -1, cover: 'none' })).toBe(10);
  });
});

describe('the start of bulbs', () => {
  test('is told with the day and the plant of that day', () => {
    const out = emptyOutcome();
    const plant = plantOf({ bulbing: 0.9 });
    expect(growDay(plant, steadyTerms(), 12, out)).toBe(true);
    expect(out).toMatchObject({
      onsetOn: 12,
      photoperiodH: 16,
      leavesMade: plant.leaves,
      shootG: plant.shootG,
    });
    expect(out.leavesGreen).toBe(plant.green);
    expect(plant.leaves).toBeCloseTo(5.1, 12);
  });

  test('ends all ripening of that day and all cold of later ones', () => {
    const plant = plantOf({ bulbing: 0.9, shootG: Math.E });
    const terms = steadyTerms({ open: { cold: 1 } });
    growDay(plant, terms, 0, emptyOutcome());
    expect(plant).toMatchObject({ hasBulb: true, ripening: 0, coldDays: 0 });
    growDay(plant, terms, 1, emptyOutcome());
    expect(plant.coldDays).toBe(0);
    expect(plant.ripening).toBeGreaterThan(0);
  });
});

describe('a season is over', () => {
  const isOver = (plant: Parameters<typeof plantOf>[0], open = {}) =>
    !growDay(plantOf(plant), steadyTerms({ open }), 0, emptyOutcome());
  const bulb = { hasBulb: true, bulbing: 1 };

  test('when the tops are down, the bulb turns back or the stand is lost', () => {
    expect(isOver({ ...bulb, ripening: 0.5 })).toBe(false);
    expect(isOver({ ...bulb, ripening: 0.99 })).toBe(true);
    expect(isOver({ ...bulb, turnBack: 10 }, { tempMeanC: 5 })).toBe(true);
    expect(isOver({}, { tempMinC: -30, soilMeanC: -10 })).toBe(true);
  });
});

test('a plant that roots gains nothing, and grows the day after', () => {
  const plant = plantOf({ rootingTT: 5 });
  const terms = steadyTerms();
  growDay(plant, terms, 0, emptyOutcome());
  expect(plant).toMatchObject({ leaves: 5, shootG: 2, bulbing: 0, rootingTT: -5 });
  growDay(plant, terms, 1, emptyOutcome());
  expect(plant.leaves).toBeCloseTo(5.1, 12);
  expect(plant.shootG).toBeGreaterThan(2);
});
