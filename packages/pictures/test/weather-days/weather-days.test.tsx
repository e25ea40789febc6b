import { climateDayOf, dayNumber, emptyRecord, meanYear } from '@neckfall/engine';
import { loadLater, speaker } from '@neckfall/words';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { svgText } from '../../src/drawing/svg-text.ts';
import { WeatherDays, weatherDaysOf } from '../../src/weather-days/index.ts';
import { anyClimate, anyDay, anyWidth, everyInk, seeded, sineSite } from '../scenes.ts';

await loadLater();
const usual = meanYear(sineSite(50, 10, 8).climate);
const first = dayNumber(2027, 3, 1);

/** Days two degrees warmer than usual, with 7 mm of rain every third. */
function record(firstDay: number, days: number) {
  const made = emptyRecord(firstDay, days);
  for (let at = 0; at < days; at++) {
    const day = climateDayOf(firstDay + at);
    made.tempMinC[at] = usual.tempMinC[day] + 2;
    made.tempMaxC[at] = usual.tempMaxC[day] + 2;
    made.rainMm[at] = at % 3 === 0 ? 7 : 0;
  }
  for (const marks of [made.known.tempMinC, made.known.tempMaxC, made.known.rainMm]) marks.fill(1);
  return made;
}

const asked = { usual, forecastFrom: null, summary: 'days', speaker: speaker('metric') };
const draw = (of: ReturnType<typeof weatherDaysOf>, width = 600) =>
  svgText(<WeatherDays width={width} {...of} />, { colours: everyInk, title: 'days' });
const bands = (svg: string) => svg.match(/fill-opacity="0\.75"/g)?.length ?? 0;

test('days are drawn at any place, length and width', () => {
  fc.assert(
    fc.property(
      anyClimate,
      anyDay,
      anyWidth,
      fc.integer({ min: 1, max: 900 }),
      (climate, day, width, days) => {
        const here = { ...asked, usual: meanYear(climate), forecastFrom: day + 5 };
        const drawn = weatherDaysOf({ ...here, record: record(day, days) });
        expect(drawn.lowC.length).toBeLessThanOrEqual(366);
        expect(draw(drawn, width)).not.toMatch(/NaN|undefined|null/);
      },
    ),
    seeded,
  );
});

test('the band is broken where nothing was measured, and drawn otherwise where it was forecast', () => {
  const holed = record(first, 60);
  expect(bands(draw(weatherDaysOf({ ...asked, record: holed })))).toBe(1);
  holed.known.tempMaxC.fill(0, 20, 27);
  const svg = draw(weatherDaysOf({ ...asked, record: holed }));
  expect([bands(svg), svg.includes('forecast')]).toEqual([2, false]);
  const ahead = draw(weatherDaysOf({ ...asked, record: holed, forecastFrom: first + 50 }));
  expect([bands(ahead), ahead.match(/stroke-dasharray="3 3"/g)?.length]).toEqual([2, 1]);
  expect(ahead).toContain('forecast');
});

test('both bands are named, in a row of their own where the picture is narrow', () => {
  const drawn = weatherDaysOf({ ...asked, record: record(first, 60) });
  const rowOf = (svg: string, word: string) => svg.match(new RegExp(`y="([\\d.]+)"[^>]*>${word}<`))?.[1];
  for (const width of [320, 900]) {
    const svg = draw(drawn, width);
    const [rain, measured, usual] = ['one stroke[^<]*', 'measured', 'usual here'].map((word) =>
      rowOf(svg, word),
    );
    expect(measured).toBeDefined();
    expect(usual).toBe(measured);
    expect(rain === measured).toBe(width === 900);
  }
});

test('of a long record the last year is drawn', () => {
  const drawn = weatherDaysOf({ ...asked, record: record(first, 1000) });
  expect([drawn.firstDay, drawn.lowC.length]).toEqual([first + 634, 366]);
});

test('a Fahrenheit reader gets round numbers of that scale, and the frost', () => {
  const { levels } = weatherDaysOf({ ...asked, record: record(first, 60), speaker: speaker('us') });
  expect(levels.map(({ text }) => text)).toEqual(expect.arrayContaining(['32°F', '50°F', '70°F']));
  expect(levels.filter(({ isFrost }) => isFrost).map(({ text }) => text)).toEqual(['32°F']);
});
