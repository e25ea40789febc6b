import { expect, test } from 'vitest';
import { usualGramsPerWeek } from '../../src/index.ts';

test('a country has its own figure, others that of the world, each with where it comes from', () => {
  // 9.3 kg a year over 52.14 weeks
  expect(usualGramsPerWeek('GB')).toMatchObject({
    gramsPerPerson: 178,
    source: { from: 'united-nations', year: 2011 },
  });
  expect(usualGramsPerWeek('IN').source).toEqual({ from: 'memory' });
  // 6.2 kg a year
  for (const country of [null, 'ZZ', 'constructor'])
    expect(usualGramsPerWeek(country)).toMatchObject({ kgPerYear: 6.2, gramsPerPerson: 119 });
});
