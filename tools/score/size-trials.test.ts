import { describe, expect, it } from 'vitest';
import { dayLengthClasses, startMethods } from '../../packages/engine/src/index.ts';
import { type SizeResult, sizeErrors } from './size-scores.ts';
import { type SizeTrial, sizeTrials } from './size-trials.ts';

/** `MM-DD` of a year without a leap day. */
function isDate(date: string): boolean {
  const day = new Date(`2015-${date}T00:00:00Z`);
  return /^\d\d-\d\d$/.test(date) && !Number.isNaN(+day) && day.toISOString().slice(5, 10) === date;
}

describe('every size trial', () => {
  it.each(sizeTrials.map((trial) => [trial.id, trial] as const))('%s can be run and judged', (_, trial) => {
    expect(trial.source.length).toBeGreaterThan(20);
    expect(Math.abs(trial.lat)).toBeLessThan(66);
    expect(Math.abs(trial.lon)).toBeLessThanOrEqual(180);
    expect(dayLengthClasses).toContain(trial.dayLengthClass);
    expect(startMethods).toContain(trial.start);
    expect(isDate(trial.date)).toBe(true);
    expect(isDate(trial.plantOut ?? '01-01')).toBe(true);
    expect(trial.start === 'sets').toBe(trial.setSizeMm !== undefined);
    // An onion of a field weighs between a pickling onion and a show bulb; a field bears at most 15 kg/m².
    expect(trial.publishedG).toBeGreaterThan(5);
    expect(trial.publishedG).toBeLessThan(500);
    expect(trial.densityPerM2).toBeGreaterThan(5);
    expect((trial.publishedG * trial.densityPerM2!) / 1000).toBeLessThan(15);
    expect(trial.lowG ?? trial.publishedG).toBeLessThanOrEqual(trial.publishedG);
    expect(trial.highG ?? trial.publishedG).toBeGreaterThanOrEqual(trial.publishedG);
  });

  it('has an id of its own', () => {
    expect(new Set(sizeTrials.map(({ id }) => id)).size).toBe(sizeTrials.length);
  });

  it('agrees with the treatments beside it on district and on whether the level counts', () => {
    const saidOf = new Map<string, Set<string>>();
    for (const { trial, district, hasLevel } of sizeTrials)
      saidOf.set(trial, (saidOf.get(trial) ?? new Set()).add(`${district} ${hasLevel}`));
    for (const [trial, said] of saidOf) expect([trial, said.size]).toEqual([trial, 1]);
  });

  it('is stored as the median plant', () => {
    // Printed: Bloemfontein, sown 11 May 2010, mean bulb 71.48 g; Carrington 2001, 3.81 to 6.57 kg/m².
    const sown = sizeTrials.find(({ id }) => id === 'bloemfontein-11-may')!;
    expect(sown.publishedG).toBeCloseTo(71.48 / Math.sqrt(1 + 0.4 ** 2), 1);
    const carrington = sizeTrials.find(({ id }) => id === 'carrington-2001')!;
    const meanOverMedian = 71.48 / sown.publishedG;
    expect((carrington.lowG! * carrington.densityPerM2! * meanOverMedian) / 1000).toBeCloseTo(3.81);
    expect((carrington.highG! * carrington.densityPerM2! * meanOverMedian) / 1000).toBeCloseTo(6.57);
  });
});

describe('errors of size', () => {
  const result = (
    [trial, district, hasLevel]: readonly [string, string, boolean],
    publishedG: number,
    answeredG: number,
  ): SizeResult => ({
    trial: { ...sizeTrials[0], id: `${trial}-${publishedG}`, trial, district, hasLevel, publishedG },
    answeredG,
  });
  const level = ['a', 'north', true] as const satisfies [SizeTrial['trial'], string, boolean];

  it('are none where the answer is what was published', () => {
    const { levels, shapes, districts } = sizeErrors([result(level, 100, 100), result(level, 50, 50)]);
    expect([...levels, ...districts]).toEqual([
      ['a', 0],
      ['north', 0],
    ]);
    expect(shapes.get('a')).toEqual([0, 0]);
  });

  it('are of level alone where all treatments are off alike', () => {
    const { levels, shapes } = sizeErrors([result(level, 100, 200), result(level, 50, 100)]);
    expect(levels.get('a')).toBeCloseTo(Math.log(2));
    for (const log of shapes.get('a')!) expect(log).toBeCloseTo(0);
  });

  it('are of shape alone where treatments are off against each other', () => {
    const { levels, shapes } = sizeErrors([result(level, 100, 200), result(level, 50, 25)]);
    expect(levels.get('a')).toBeCloseTo(0);
    expect(shapes.get('a')![0]).toBeCloseTo(Math.log(2));
    expect(shapes.get('a')![1]).toBeCloseTo(-Math.log(2));
  });

  it('keep the shape but no level of a trial that is good for ratios', () => {
    const ratios = ['b', 'north', false] as const;
    const { levels, shapes, districts } = sizeErrors([result(ratios, 100, 900), result(ratios, 50, 450)]);
    expect([levels.size, districts.size]).toEqual([0, 0]);
    expect(shapes.get('b')).toHaveLength(2);
  });

  it('have no shape where a trial is a single treatment', () => {
    const { levels, shapes } = sizeErrors([result(level, 100, 50)]);
    expect(levels.get('a')).toBeCloseTo(-Math.log(2));
    expect(shapes.size).toBe(0);
  });

  it('weigh the trials of a district alike, however many treatments they have', () => {
    const { districts } = sizeErrors([
      result(level, 100, 200),
      result(level, 50, 100),
      result(level, 25, 50),
      result(['c', 'north', true], 100, 50),
    ]);
    expect(districts.get('north')).toBeCloseTo(0);
  });

  it('stay finite where no bulb forms', () => {
    expect(sizeErrors([result(level, 100, 0)]).levels.get('a')).toBeCloseTo(-Math.log(100));
  });
});
