import { onionTypes, startMethods, tryStarts, verdicts, waysOf } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type as font } from '../../src/drawing/picture.tsx';
import { svgText } from '../../src/drawing/svg-text.ts';
import { textWidth } from '../../src/drawing/text-fit.ts';
import { closedYear, hillHeight, hillsLayout } from '../../src/start-hills/hills-layout.ts';
import {
  type HillStart,
  hillsDayAt,
  hillsXOf,
  StartHills,
  startHillsOf,
  startHillsTableOf,
} from '../../src/start-hills/index.ts';
import { anyDay, anyWidth, everyInk, newYear2027, seeded, sineSite } from '../scenes.ts';

const anyShares = fc.array(fc.nat({ max: 10 }), { minLength: 6, maxLength: 6 }).map((counts) => {
  const total = counts.reduce((a, b) => a + b, 0) || 1;
  if (total === 1) counts[5] = 1;
  const sum = counts.reduce((a, b) => a + b, 0);
  return Object.fromEntries(verdicts.map((verdict, i) => [verdict, counts[i] / sum])) as HillStart['shares'];
});
const anyYear = fc
  .record({ firstDay: anyDay, shares: fc.array(anyShares, { minLength: 52, maxLength: 52 }) })
  .map(({ firstDay, shares }) => ({
    firstDay,
    days: 365,
    starts: shares.map(
      (share, week): HillStart => ({
        day: firstDay + 7 * week,
        shares: share,
        tried: 30,
        acrossMm: null,
        leavesGreen: null,
        barredBy: null,
      }),
    ),
  }));

const texts = {
  today: null,
  sizeText: 'bulb across, 20–90 mm',
  leavesText: 'green leaves when bulbs start, 4–9',
  goodText: 'good bulbs',
  troubleTexts: {
    small: 'small',
    'not-ripe': 'thick-necked',
    'no-bulb': 'no bulb',
    bolts: 'run to flower',
    'winter-killed': 'lost to winter',
  },
};

describe('hills and hollows', () => {
  test('are each named, in their place or in the key, and no word stands over another', () => {
    fc.assert(
      fc.property(anyYear, anyWidth, (year, width) => {
        const { words, key, hollows, height, keyTop, axis } = hillsLayout({ width, ...texts, ...year });
        const named = new Set([...words, ...key].map(({ text }) => text));
        for (const { trouble } of hollows) expect(named).toContain(texts.troubleTexts[trouble]);
        for (const [i, a] of words.entries()) {
          for (const b of words.slice(0, i)) {
            const wide = (textWidth(a.text, font.text) + textWidth(b.text, font.text)) / 2;
            expect(Math.abs(a.x - b.x) >= wide || Math.abs(a.y - b.y) >= 18).toBe(true);
          }
        }
        for (const { text, x, y } of key) {
          expect(x + 22 + textWidth(text, font.small)).toBeLessThanOrEqual(axis.right);
          expect(keyTop + y + 14).toBeLessThan(height);
        }
      }),
      seeded,
    );
  });

  test('name the weeks in which nobody starts, and no hill or hollow there', () => {
    fc.assert(
      fc.property(anyYear, anyWidth, fc.integer({ min: 4, max: 30 }), (year, width, weeks) => {
        const starts = year.starts.map((start, week) =>
          week >= 10 && week < 10 + weeks ? { ...start, barredBy: 'bed too cold' } : start,
        );
        const { barred, words, key, axis } = hillsLayout({ width, ...texts, ...year, starts });
        expect(barred).toHaveLength(1);
        const [{ from, to, lines }] = barred;
        expect(to - from).toBeCloseTo(((axis.right - axis.left) * 7 * weeks) / 365, 0);
        expect(lines?.join(' ') ?? key.find(({ trouble }) => trouble === 'barred')?.text).toBe(
          'bed too cold',
        );
        // a word is moved in from the ends of the axis alone
        const inner = words.filter(({ x }) => x > from + 60 && x < to - 60);
        expect(inner).toEqual([]);
      }),
      seeded,
    );
  });

  test('add up at every start: what is not hill is hollow', () => {
    fc.assert(
      fc.property(anyYear, anyWidth, (year, width) => {
        const { hill, hollows, ground } = hillsLayout({ width, ...texts, ...year });
        hill.forEach(([, y], i) => {
          const deep = hollows.reduce((sum, { upper, lower }) => sum + lower[i][1] - upper[i][1], 0);
          expect(ground - y + deep).toBeCloseTo(hillHeight, 6);
        });
      }),
      seeded,
    );
  });

  test('reach from one end of the year to the other', () => {
    fc.assert(
      fc.property(anyYear, ({ firstDay, days, starts }) => {
        const closed = closedYear(starts.slice(1), firstDay, days);
        expect(closed[0].day).toBe(firstDay);
        expect(closed.at(-1)?.day).toBe(firstDay + days);
      }),
      seeded,
    );
  });

  test('take at the ends what the nearer of the two starts across New Year says', () => {
    const [{ firstDay, days, starts }] = fc.sample(anyYear, { ...seeded, numRuns: 1 });
    // the last start is 8 days before the year's end; the first 7, then 14 after its beginning
    const ends = (from: number) => {
      const closed = closedYear(starts.slice(from), firstDay, days);
      return [closed[0], closed[closed.length - 1]].map(({ shares }) =>
        starts.findIndex((start) => start.shares === shares),
      );
    };
    expect(ends(1)).toEqual([1, 1]);
    expect(ends(2)).toEqual([51, 51]);
  });
});

test('a pointer finds the day a marker stands at', () => {
  fc.assert(
    fc.property(anyWidth, anyDay, fc.nat({ max: 364 }), (width, firstDay, i) => {
      const props = { width, firstDay, days: 365 };
      expect(hillsDayAt(props, hillsXOf(props, firstDay + i))).toBe(firstDay + i);
    }),
    seeded,
  );
});

describe('the year tried at places of all kinds', () => {
  const metric = speaker('metric');
  const places = [
    ['temperate', sineSite(52, 10, 7)],
    ['southern', sineSite(-34, 18, 5)],
    ['tropical', sineSite(2, 24, 1)],
    ['polar', sineSite(69, 3, 10)],
  ] as const;

  test.each(places)('is drawn and told: %s', (_, site) => {
    for (const [i, type] of onionTypes.entries()) {
      const ways = waysOf(site, { type, traits: null }, [startMethods[i % startMethods.length]]);
      const answer = tryStarts(site, ways, {}, newYear2027);
      const input = {
        answer,
        firstDay: newYear2027 + 100,
        today: newYear2027 + 122,
        chosen: newYear2027 + 200,
        speaker: metric,
      };
      const props = startHillsOf(input);
      const svg = svgText(<StartHills id="h" width={330} {...props} />, {
        colours: everyInk,
        title: 'hills',
      });
      expect(svg).not.toMatch(/NaN|undefined/);
      expect(props.summary).not.toMatch(/NaN|undefined/);
      const days = props.starts.map(({ day }) => day);
      expect(days).toEqual(days.toSorted((a, b) => a - b));
      expect(days[0]).toBeGreaterThanOrEqual(input.firstDay);
      expect(days[51]).toBeLessThan(input.firstDay + 365);
      expect(startHillsTableOf(input).rows).toHaveLength(52);
    }
  });
});
