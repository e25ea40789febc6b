import { describe, expect, test } from 'vitest';
import { endSeason } from '../../src/season/end-season.ts';
import { emptyOutcome, stage } from '../../src/season/outcome.ts';
import type { PlantState } from '../../src/season/plant-state.ts';
import { plantOf, steadyTerms } from './steady-bed.ts';

const endOf = (other: Partial<PlantState>) => {
  const out = emptyOutcome();
  endSeason(plantOf(other), steadyTerms(), 140, out);
  return out;
};
const bulb = { hasBulb: true, bulbing: 1, bulbG: 10, shootG: 4 };

describe('what a season came to', () => {
  test('is a bulb with 30 % of the shoot where tops fell (memory), and the day', () => {
    const ripe = endOf({ ...bulb, ripening: 1.02 });
    expect(ripe).toMatchObject({ reached: stage.fallen, fellOn: 140 });
    expect(ripe.bulbDryG).toBeCloseTo(11.2, 12);
  });

  test('is less of it as far as it ripened, and no such day', () => {
    const unripe = endOf({ ...bulb, ripening: 0.5, reverted: true });
    expect(unripe).toMatchObject({ reached: stage.onset, fellOn: 0, reverted: true });
    expect(unripe.bulbDryG).toBeCloseTo(10.6, 12);
  });

  test('is no bulb where none started, and the plant that stands then', () => {
    expect(endOf({ shootG: 4, leaves: 7, green: 6 })).toMatchObject({
      reached: stage.planted,
      bulbDryG: 0,
      leavesMade: 7,
      leavesGreen: 6,
      shootG: 4,
    });
  });

  test('counts half of the plants as bolters at the half-point of cold, 40 d', () => {
    expect(endOf({ coldDays: 40 })).toMatchObject({ coldDays: 40, boltedShare: 0.5 });
    // a spread of 5 d more: logistic(1)
    expect(endOf({ coldDays: 45 }).boltedShare).toBeCloseTo(Math.E / (1 + Math.E), 12);
  });

  test('passes on the stand and its thirst', () => {
    expect(endOf({ aliveShare: 0.7, liftedShare: 0.1, thirstyDays: 9 })).toMatchObject({
      aliveShare: 0.7,
      liftedShare: 0.1,
      thirstyDays: 9,
    });
  });
});
