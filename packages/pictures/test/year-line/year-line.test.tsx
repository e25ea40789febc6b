import { cropYear, placeYear, plainYearStart } from '@neckfall/answers';
import {
  climateYearDays,
  medianSeasonDays,
  neededSunUpH,
  onionTypes,
  runPlan,
  startMethods,
} from '@neckfall/engine';
import { loadLater, speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { svgText } from '../../src/drawing/svg-text.ts';
import { isApart, isClear } from '../../src/drawing/words-box.ts';
import {
  cropLineOf,
  YearLine,
  type YearLineProps,
  yearLineOf,
  yearTableOf,
} from '../../src/year-line/index.ts';
import { yearLayout } from '../../src/year-line/year-layout.ts';
import { allWords, yearWords } from '../../src/year-line/year-words.ts';
import { anyClimate, anyDay, anyWidth, everyInk, newYear2027, planOf, seeded, sineSite } from '../scenes.ts';

const metric = speaker('metric');
// work is told on a page opened later
await loadLater();
const draw = (props: YearLineProps) =>
  svgText(<YearLine {...props} />, { colours: everyInk, title: 'a year' });

/** Paths are written to a tenth of a px. */
const hair = 0.1;

/** From and to of each stroke of rain. */
function rainPaths(svg: string): number[][] {
  const [, path = ''] = /<path d="([^"]*)" stroke="#123" stroke-width="1.1"/.exec(svg) ?? [];
  return [...path.matchAll(/M(\S+) (\S+)L([^ M]+) ([^ M]+)/g)].map((found) => found.slice(1).map(Number));
}

describe('the year of any place', () => {
  test('is drawn between the poles, wherever the year begins', () => {
    fc.assert(
      fc.property(
        anyClimate,
        anyDay,
        anyWidth,
        fc.double({ min: 10, max: 17, noNaN: true }),
        (climate, day, width, need) => {
          const year = placeYear(climate, plainYearStart(day, climate.latitudeDeg), climateYearDays);
          const props = yearLineOf({ year, needSunUpH: need, today: day, crop: null, speaker: metric });
          expect(draw({ id: 'y', width, ...props })).not.toMatch(/NaN|undefined|null/);
          expect(props.summary).not.toMatch(/NaN|undefined|null/);
          expect(yearTableOf({ year, speaker: metric }).rows).toHaveLength(12);
        },
      ),
      seeded,
    );
  });

  test('keeps its words on the picture and off each other, and rain and pins off its words', () => {
    fc.assert(
      fc.property(anyClimate, anyDay, anyWidth, (climate, day, width) => {
        const year = placeYear(climate, plainYearStart(day, climate.latitudeDeg), climateYearDays);
        const props = yearLineOf({ year, needSunUpH: 14, today: day, crop: null, speaker: metric });
        const layout = yearLayout({ width, ...props });
        const words = allWords(yearWords(layout, { id: 'y', width, ...props }));
        // all there where there is room, but for text of twice the size on a small phone
        if (width >= 200) expect(words.length).toBeGreaterThan(props.dayTexts.length);
        words.forEach((said, i) => {
          expect(said.x - said.half).toBeGreaterThanOrEqual(0);
          expect(said.x + said.half).toBeLessThanOrEqual(width);
          for (const other of words.slice(0, i)) {
            if (said !== other)
              expect({ apart: isApart(said, other), said, other }).toMatchObject({ apart: true });
          }
        });
        const rain = rainPaths(draw({ id: 'y', width, ...props }));
        for (const [x1, y1, x2, y2] of rain) {
          for (const said of words)
            expect(
              isClear(said, Math.min(x1, x2) + hair, y1 + hair, Math.max(x1, x2) - hair, y2 - hair),
            ).toBe(true);
        }
      }),
      seeded,
    );
  });

  test('has today on it, and its summer in the middle', () => {
    fc.assert(
      fc.property(anyClimate, anyDay, (climate, day) => {
        const firstDay = plainYearStart(day, climate.latitudeDeg);
        expect(day - firstDay).toBeGreaterThanOrEqual(0);
        expect(day - firstDay).toBeLessThan(366);
        const { sunUpH } = placeYear(climate, firstDay, climateYearDays);
        const middle = sunUpH.slice(120, 240);
        expect(Math.max(...middle)).toBe(Math.max(...sunUpH));
      }),
      seeded,
    );
  });

  test('says so where the sun stays up and where it stays down', () => {
    const arctic = placeYear(sineSite(75, 0, 10).climate, newYear2027, climateYearDays);
    const texts = yearLineOf({
      year: arctic,
      needSunUpH: null,
      today: null,
      crop: null,
      speaker: metric,
    }).dayTexts;
    expect(texts.map(({ text }) => text)).toEqual(['the sun does not set', 'the sun does not rise']);
  });

  test('lets rain and heat lead where days hardly change', () => {
    const lead = (latitudeDeg: number) => {
      const year = placeYear(sineSite(latitudeDeg, 20, 3).climate, newYear2027, climateYearDays);
      return yearLineOf({ year, needSunUpH: null, today: null, crop: null, speaker: metric }).lead;
    };
    expect([lead(5), lead(-10), lead(45)]).toEqual(['weather', 'weather', 'days']);
  });

  test('keeps the words of the need off those of the shortest day, be the water ever so shallow', () => {
    const { climate } = sineSite(30, 20, 8);
    for (let back = 0; back < climateYearDays; back += 30) {
      const year = placeYear(climate, newYear2027 - back, climateYearDays);
      const need = Math.min(...year.sunUpH) + 0.4;
      const props = yearLineOf({ year, needSunUpH: need, today: null, crop: null, speaker: metric });
      const svg = draw({ id: 'y', width: 900, ...props });
      const at = (words: string) => {
        const [, x, y] = new RegExp(`<text x="([^"]+)" y="([^"]+)"[^>]*>${words}`).exec(svg) ?? [];
        return { x: Number(x), y: Number(y) };
      };
      const [short, needed] = [at('shortest'), at('long enough')];
      expect(Math.abs(short.y - needed.y) > 13 || Math.abs(short.x - needed.x) > 90).toBe(true);
    }
  });

  test('knows days that are always, never, and for part of the year long enough', () => {
    const year = placeYear(sineSite(50, 10, 8).climate, newYear2027, climateYearDays);
    const summary = (needSunUpH: number) =>
      yearLineOf({ year, needSunUpH, today: null, crop: null, speaker: metric }).summary;
    expect(summary(6)).toContain('all days here are long enough');
    expect(summary(18)).toContain('no day here is that long');
    expect(summary(14)).toMatch(/they last from \d+ (April|May) to \d+ August/);
  });
});

describe('a crop on the year line', () => {
  const sites = [
    sineSite(52, 10, 7),
    sineSite(-34, 18, 5),
    sineSite(2, 24, 1),
    sineSite(69, 3, 10),
    sineSite(45, 6, 18),
  ];
  const anyPlan = fc.record({
    site: fc.constantFrom(...sites),
    type: fc.constantFrom(...onionTypes),
    start: fc.constantFrom(...startMethods),
    day: anyDay,
  });

  test('is drawn whatever comes of it: bulbs, none, winter, New Year', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(anyPlan, anyWidth, ({ site, type, start, day }, width) => {
        const plan = planOf(type, start, day);
        const summary = runPlan(site, plan);
        seen.add(summary.outcome);
        const rows = medianSeasonDays(site, plan);
        const work = summary.neckFall.days
          ? [{ number: 1, day: summary.neckFall.days.p50, text: 'Lift' }]
          : [];
        const crop = cropLineOf(summary, rows, metric, [], work);
        const { firstDay, days } = cropYear(
          day,
          Math.max(rows.at(-1)?.day ?? day, summary.neckFall.days?.p90 ?? day),
        );
        expect(days).toBeGreaterThanOrEqual(365);
        const need = neededSunUpH(site, summary.needPhotoperiodH);
        const year = placeYear(site.climate, firstDay, days);
        const props = yearLineOf({ year, needSunUpH: need, today: null, crop, speaker: metric });
        expect(draw({ id: 'c', width, ...props })).not.toMatch(/NaN|undefined/);
        expect(props.summary.includes('Lift')).toBe(work.length > 0);
        for (const mark of crop.marks) {
          expect(mark.day).toBeGreaterThanOrEqual(firstDay);
          expect(mark.day).toBeLessThan(firstDay + days);
        }
        const counts = crop.leaves.map(({ made }) => made);
        expect(counts).toEqual(counts.toSorted((a, b) => a - b));
        // what fewer than half of the years bring is not marked
        expect(crop.marks.some(({ kind }) => kind === 'tops')).toBe(summary.neckFall.share >= 0.5);
        expect(crop.marks.some(({ kind }) => kind === 'bulbs')).toBe(summary.onset.share >= 0.5);
      }),
      { ...seeded, numRuns: 120 },
    );
    expect(seen.size).toBeGreaterThanOrEqual(3);
  });
});

test('keeps its look', () => {
  const days = 61;
  const hours = Array.from({ length: days }, (_, i) => 12 + i / 20);
  const props: YearLineProps = {
    id: 'y',
    width: 320,
    summary: 'two months',
    note: 'Above the water days are long enough.',
    firstDay: newYear2027 + 59,
    sunUpH: hours,
    rainMm: hours.map(() => 0.7),
    frostShare: hours.map((_, i) => Math.max(0, 0.5 - i / 60)),
    highC: hours.map((_, i) => 10 + i / 2.6),
    need: { hours: 14, text: 'long enough: 14 h' },
    dayTexts: [{ day: newYear2027 + 119, text: 'longest day 15 h', place: 'peak' }],
    today: { day: newYear2027 + 80, text: 'today, 22 March' },
    months: Array.from({ length: 12 }, (_, month) => metric.month(month + 1)),
    frostText: 'frost',
    heatText: 'hot',
    rainText: 'one stroke, 5 mm of rain',
    lead: 'days',
    crop: {
      leaves: [
        { day: newYear2027 + 70, made: 1 },
        { day: newYear2027 + 90, made: 2 },
        { day: newYear2027 + 112, made: 2 },
      ],
      leavesText: { day: newYear2027 + 95, text: '2 leaves' },
      bulb: [
        { day: newYear2027 + 96, acrossMm: 20 },
        { day: newYear2027 + 112, acrossMm: 50 },
      ],
      topsOver: newYear2027 + 112,
      counted: [],
      work: [
        { number: 1, day: newYear2027 + 80, text: 'Sow' },
        { number: 2, day: newYear2027 + 82, text: 'Weed' },
        { number: 3, day: newYear2027 + 113, text: 'Lift' },
      ],
      marks: [
        { kind: 'start', day: newYear2027 + 62, text: 'sown 4 March', span: null },
        {
          kind: 'tops',
          day: newYear2027 + 112,
          text: 'tops go over 23 April',
          span: { from: newYear2027 + 108, to: newYear2027 + 116 },
        },
      ],
    },
  };
  expect(draw(props).replaceAll('><', '>\n<')).toMatchSnapshot();
});
