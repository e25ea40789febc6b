import fc from 'fast-check';
import { expect, test } from 'vitest';
import { storeLayout } from '../../src/store-year/store-layout.ts';
import { seeded } from '../scenes.ts';

const words = { week: 'week', eaten: 'eaten', lost: 'lost', need: 'need', span: 'span' };
const bulbs = fc.double({ min: 0, max: 20, noNaN: true });
const month = fc.record({
  name: fc.constant('Sept'),
  days: fc.constant(30),
  kept: fc.array(bulbs, { minLength: 3, maxLength: 3 }),
  eaten: fc.double({ min: 0, max: 4.4, noNaN: true }),
  lost: fc.double({ min: 0, max: 9, noNaN: true }),
  span: fc.tuple(bulbs, bulbs).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const),
});
const year = fc.record({
  width: fc.integer({ min: 270, max: 1300 }),
  months: fc.array(month, { minLength: 12, maxLength: 12 }),
  gaps: fc
    .tuple(fc.double({ min: 0, max: 11, noNaN: true }), fc.double({ min: 0.1, max: 11, noNaN: true }))
    .map(([from, lasts]) => [
      { from, to: Math.min(12, from + lasts), text: 'may be bare 8 January – 8 July' },
    ]),
});

test('each bulb hangs within the picture, and no two in one place', () => {
  fc.assert(
    fc.property(year, (of) => {
      const layout = storeLayout({ ...of, lots: ['1', '2', '3'], need: 4.35, words, summary: '' });
      const strings = layout.rails.flatMap((rail) => rail.strings);
      expect(strings.length).toBe(12);
      for (const [at, { kept, lost, eaten }] of strings.entries()) {
        const spots = [...kept.flat(), ...lost, ...eaten];
        const { months } = of;
        const count = [...months[at].kept, months[at].lost, months[at].eaten];
        expect(spots.length).toBe(count.reduce((sum, one) => sum + Math.round(one), 0));
        expect(new Set(spots.map(({ x, y }) => `${x} ${y}`)).size).toBe(spots.length);
        for (const { x, y } of spots) {
          expect(x - layout.bulb / 2).toBeGreaterThanOrEqual(0);
          expect(x + layout.bulb / 2).toBeLessThanOrEqual(of.width);
          expect(y).toBeLessThan(layout.foot);
        }
      }
    }),
    seeded,
  );
});

test('a gap is named, within the picture and clear of what hangs there', () => {
  fc.assert(
    fc.property(year, (of) => {
      const layout = storeLayout({ ...of, lots: ['1', '2', '3'], need: 4.35, words, summary: '' });
      const signs = layout.rails.flatMap((rail) => rail.gaps.map((gap) => ({ rail, gap })));
      const named = signs.filter(({ gap }) => gap.words !== null);
      expect(named.length).toBeGreaterThanOrEqual(1);
      for (const { rail, gap } of named) {
        const { x, y, half } = gap.words!;
        expect(x - half).toBeGreaterThanOrEqual(-0.5);
        expect(x + half).toBeLessThanOrEqual(of.width + 0.5);
        for (const string of rail.strings)
          if (Math.abs(string.x - x) < half) expect(y - 12).toBeGreaterThanOrEqual(string.foot - layout.bulb);
      }
    }),
    seeded,
  );
});
