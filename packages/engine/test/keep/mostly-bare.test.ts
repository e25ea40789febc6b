import { expect, test } from 'vitest';
import { mostlyBare } from '../../src/keep/mostly-bare.ts';

const years = 4;

/** Four years, of which so many go short from one day to another, both among them. */
function unfedIn(...spans: [shortYears: number, from: number, to: number][]): Float64Array {
  const unfed = new Float64Array(years * 365);
  for (const [short, from, to] of spans)
    for (let year = 0; year < short; year++)
      for (let day = from; day <= to; day++) unfed[year * 365 + day] = 1;
  return unfed;
}

test('the days on which half of the years go short, within a gap that one alone makes', () => {
  expect(mostlyBare(unfedIn([1, 70, 209], [2, 110, 180]), years, 70, 140)).toEqual({ from: 40, to: 110 });
});

test('none where poor years alone are short', () => {
  expect(mostlyBare(unfedIn([1, 70, 209]), years, 70, 140)).toBeNull();
});

test('the longest of several, over the turn of the year too', () => {
  expect(mostlyBare(unfedIn([3, 350, 364], [3, 0, 20], [4, 30, 32]), years, 340, 60)).toEqual({
    from: 10,
    to: 45,
  });
});
