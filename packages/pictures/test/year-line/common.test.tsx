import { placeYear } from '@neckfall/answers';
import { civilDate, dayNumber, medianSeasonDays, runPlan } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { xOfDay } from '../../src/drawing/day-axis.ts';
import { svgText } from '../../src/drawing/svg-text.ts';
import {
  byYears,
  commonAxisOf,
  commonScaleOf,
  cropInYear,
  cropLineOf,
  halfYearDays,
  YearLine,
  yearLineOf,
  yearsToAxis,
} from '../../src/year-line/index.ts';
import { stepHeights, yearLayout } from '../../src/year-line/year-layout.ts';
import { allWords, yearWords } from '../../src/year-line/year-words.ts';
import { anyClimate, anyDay, anyWidth, everyInk, newYear2027, planOf, seeded, sineSite } from '../scenes.ts';

const metric = speaker('metric');
const anyCrops = fc.array(
  fc.record({ from: anyDay, length: fc.integer({ min: 30, max: 360 }), south: fc.boolean() }),
  { minLength: 1, maxLength: 6 },
);

describe('the axis that crops share', () => {
  test('holds each of them whole, at the dates they have, in whole months and the fewest', () => {
    fc.assert(
      fc.property(anyCrops, (crops) => {
        const lines = crops.map(({ from, length, south }) => ({
          crop: { from, to: from + length },
          shiftDays: south ? halfYearDays : 0,
        }));
        const { firstDay, days } = commonAxisOf(lines, 2027);
        expect(civilDate(firstDay)).toMatchObject({ year: 2027, day: 1 });
        expect(civilDate(firstDay + days).day === 1 || days === 365).toBe(true);
        expect(days).toBeGreaterThanOrEqual(365);
        // a year for the start to come round, another for the crop
        expect(days).toBeLessThanOrEqual(2 * 366 + 31);
        for (const { crop, shiftDays } of lines) {
          const years = yearsToAxis(crop.from, firstDay + shiftDays);
          const [from, to] = [crop.from, crop.to].map((day) => byYears(day, years));
          expect(from).toBeGreaterThanOrEqual(firstDay + shiftDays);
          expect(to).toBeLessThan(firstDay + shiftDays + days);
        }
        if (lines.length === 1) expect(days).toBeLessThanOrEqual(400);
      }),
      seeded,
    );
  });

  test('is the calendar year for crops of spring, and turns round for those that stand over winter', () => {
    const spring = { crop: { from: newYear2027 + 80, to: newYear2027 + 220 }, shiftDays: 0 };
    const winter = {
      crop: { from: dayNumber(2027, 8, 20), to: dayNumber(2028, 6, 20) },
      shiftDays: 0,
    };
    expect(commonAxisOf([spring], 2027)).toEqual({ firstDay: newYear2027, days: 365 });
    const { firstDay, days } = commonAxisOf([spring, winter], 2027);
    expect(civilDate(firstDay).month).toBeGreaterThan(2);
    expect(days).toBeLessThanOrEqual(397);
  });

  test('keeps a date its date over leap years', () => {
    expect(byYears(dayNumber(2028, 2, 29), -1)).toBe(dayNumber(2027, 2, 28));
    expect(byYears(dayNumber(2028, 6, 20), -1)).toBe(dayNumber(2027, 6, 20));
    expect(byYears(dayNumber(2028, 12, 31), 1)).toBe(dayNumber(2029, 12, 31));
    expect(yearsToAxis(dayNumber(2024, 3, 1), dayNumber(2027, 3, 1))).toBe(3);
    expect(yearsToAxis(dayNumber(2024, 2, 28), dayNumber(2027, 3, 1))).toBe(4);
  });

  test('half a year brings one longest day to the other: 21 June to 21 December (almanac)', () => {
    expect(civilDate(dayNumber(2027, 6, 21) + halfYearDays)).toMatchObject({ month: 12, day: 21 });
  });
});

/** A year with a crop on it, as one of several. */
function lineAt(site: ReturnType<typeof sineSite>, firstDay: number, days: number) {
  const plan = planOf('short', 'sets', newYear2027 + 60);
  const summary = runPlan(site, plan);
  const crop = cropLineOf(summary, medianSeasonDays(site, plan), metric);
  const year = placeYear(site.climate, firstDay, days);
  const years = yearsToAxis(plan.startDay, firstDay);
  return yearLineOf({
    year,
    needSunUpH: 14,
    today: null,
    crop: cropInYear(crop, years),
    speaker: metric,
  });
}

describe('years under each other', () => {
  const sites = [
    sineSite(60, 6, 12),
    sineSite(46, 12, 10),
    sineSite(-34, 18, 6),
    sineSite(-1, 20, 1),
    sineSite(75, 0, 10),
    sineSite(30, 27, 9),
  ];

  test('have the same day at the same x, and the same hours, leaves and bulb at the same height', () => {
    fc.assert(
      fc.property(anyWidth, fc.subarray(sites, { minLength: 2 }), (width, some) => {
        const lines = some.map((site) => lineAt(site, newYear2027, 730));
        const common = commonScaleOf(lines, width);
        const layouts = lines.map((line) => yearLayout({ width, ...line, common }));
        const [first, ...others] = layouts;
        for (const layout of others) {
          for (const day of [0, 100, 364, 729])
            expect(xOfDay(layout.axis, newYear2027 + day)).toBe(xOfDay(first.axis, newYear2027 + day));
          for (const hours of [common.lowH, 12, common.highH])
            expect(layout.yOfHours(hours)).toBe(first.yOfHours(hours));
          expect(layout.height).toBe(first.height);
          const heights = [layout, first].map((one) => stepHeights(one, { leaves: [] })(8));
          expect(heights[0]).toBe(heights[1]);
        }
        expect(first.yOfHours(common.highH)).toBe(first.ridgeTop);
        expect(first.yOfHours(common.lowH)).toBe(first.ground);
      }),
      { ...seeded, numRuns: 12 },
    );
  });

  test('are drawn whole, with all their words on the picture', () => {
    fc.assert(
      fc.property(fc.array(anyClimate, { minLength: 1, maxLength: 3 }), anyWidth, (climates, width) => {
        const lines = climates.map((climate) =>
          yearLineOf({
            year: placeYear(climate, newYear2027, 365),
            needSunUpH: 14,
            today: null,
            crop: null,
            speaker: metric,
          }),
        );
        const common = commonScaleOf(lines, width);
        for (const line of lines) {
          const props = { id: 'c', width, ...line, common };
          const layout = yearLayout(props);
          for (const { y } of allWords(yearWords(layout, props))) {
            expect(y - 14).toBeGreaterThanOrEqual(0);
            expect(y).toBeLessThan(layout.height);
          }
          const svg = svgText(<YearLine {...props} />, { colours: everyInk, title: 'a year' });
          expect(svg).not.toMatch(/NaN|undefined|null/);
          expect(svg).not.toContain(line.rainText);
        }
      }),
      { ...seeded, numRuns: 40 },
    );
  });

  test('a crop moved by years keeps its words', () => {
    const [site] = sites.slice(1);
    const plan = planOf('early-long', 'sets', dayNumber(2028, 3, 20));
    const crop = cropLineOf(runPlan(site, plan), medianSeasonDays(site, plan), metric);
    const moved = cropInYear(crop, -1);
    expect(moved.marks.map(({ text }) => text)).toEqual(crop.marks.map(({ text }) => text));
    expect(moved.marks[0].day).toBe(dayNumber(2027, 3, 20));
    expect(moved.leaves).toHaveLength(crop.leaves.length);
    expect(cropInYear(crop, 0)).toBe(crop);
  });
});
