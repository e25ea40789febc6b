import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  defaultPlantValues,
  growthParameters,
  randomSource,
  typeParameters,
} from '../../packages/engine/src/index.ts';
import { readCalendarRows } from '../score/calendar-rows.ts';
import { fitPlant } from './fit-plant.ts';
import { allKnobs as knobs, knobValue, moved } from './knobs.ts';
import { minimise } from './minimise.ts';
import { writeValues } from './write-values.ts';

const rows = readCalendarRows(fileURLToPath(new URL('../score/fixtures/calendars.json', import.meta.url)));
const source = fileURLToPath(new URL('../../packages/engine/src/plant/parameters.ts', import.meta.url));

describe('a fit', () => {
  // From the middle of all bounds, so that there is something to gain.
  const middle = moved(
    defaultPlantValues,
    knobs,
    knobs.map(() => 0.5),
  );
  const run = () => fitPlant(rows, middle, { generations: 2, seed: 7 });
  let first: ReturnType<typeof fitPlant>;
  beforeAll(() => {
    first = run();
  }, 60_000);

  it('lowers the loss of every stage from a poor start', () => {
    for (const { before, after } of first.stages) expect(after).toBeLessThan(before);
  });

  it("stays inside the parameters' own bounds, and types that share a value share it", () => {
    for (const knob of knobs) {
      const bounds =
        knob.of === 'growth'
          ? [growthParameters[knob.parameter]]
          : knob.types.map((type) => typeParameters[knob.parameter][type]);
      for (const { low, high } of bounds) {
        expect(knobValue(knob, first.values)).toBeGreaterThanOrEqual(low);
        expect(knobValue(knob, first.values)).toBeLessThanOrEqual(high);
      }
      if (knob.of === 'type')
        for (const type of knob.types)
          expect(first.values.types[type][knob.parameter]).toBe(knobValue(knob, first.values));
    }
  });

  it('gives the same values again', () => expect(run().values).toEqual(first.values));
});

describe('minimising', () => {
  it('finds a minimum inside the box and one on its edge', () => {
    const bowl = ([x, y, z]: readonly number[]) => (x - 0.3) ** 2 + 30 * (y - 0.7) ** 2 + (z + 0.5) ** 2;
    const { at } = minimise(bowl, [0.9, 0.1, 0.5], { generations: 120, random: randomSource(1) });
    expect(at[0]).toBeCloseTo(0.3, 2);
    expect(at[1]).toBeCloseTo(0.7, 2);
    expect(at[2]).toBeCloseTo(0, 2);
  });

  it('never ends worse than it began', () => {
    const worseElsewhere = (at: readonly number[]) => (at[0] === 0.5 ? 0 : 1);
    const found = minimise(worseElsewhere, [0.5, 0.5], { generations: 3, random: randomSource(1) });
    expect(found).toEqual({ at: [0.5, 0.5], loss: 0 });
  });
});

describe('writing values', () => {
  const text = readFileSync(source, 'utf8');

  it('leaves the file as it is where no knob has moved', () => {
    expect(writeValues(text, knobs, defaultPlantValues)).toBe(text);
  });

  it('puts every moved value in its place and touches nothing else', () => {
    const lowest = moved(
      defaultPlantValues,
      knobs,
      knobs.map(() => 0),
    );
    const written = writeValues(text, knobs, lowest);
    expect(written).not.toBe(text);
    expect(writeValues(written, knobs, defaultPlantValues)).toBe(text);
  });

  it('refuses a file without one of the parameters', () => {
    const without = text.replace('bulbingRate:', 'bulbingPace:');
    expect(() => writeValues(without, knobs, defaultPlantValues)).toThrow('bulbingRate');
  });
});
