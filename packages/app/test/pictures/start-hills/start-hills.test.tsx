import { onionTypes, startMethods, tryStarts, verdicts } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closedYear, hillHeight, hillsLayout } from '../../../src/pictures/start-hills/hills-layout.ts';
import {
  type HillStart,
  hillsDayAt,
  hillsXOf,
  StartHills,
  startHillsOf,
  startHillsTableOf,
} from '../../../src/pictures/start-hills/index.ts';
import { svgText } from '../../../src/pictures/svg-text.ts';
import { anyDay, anyWidth, everyInk, newYear2027, planOf, seeded, sineSite } from '../scenes.ts';

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
        acrossMm: null,
        leavesGreen: null,
      }),
    ),
  }));

describe('hills and hollows', () => {
  test('add up at every start: what is not hill is hollow', () => {
    fc.assert(
      fc.property(anyYear, anyWidth, (year, width) => {
        const { hill, hollows, ground } = hillsLayout({ width, ...year });
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
      const plan = planOf(type, startMethods[i % startMethods.length], newYear2027);
      const answer = tryStarts(site, plan, 2027);
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
