import { lastLatitude, type OnionType } from '@neckfall/engine';
import { loadLater, speaker } from '@neckfall/words';
import { beforeAll, describe, expect, test } from 'vitest';
import { svgText } from '../../src/drawing/svg-text.ts';
import {
  type BestOfDegree,
  LatitudeLine,
  latitudeLineOf,
  latitudeTableOf,
} from '../../src/latitudes/index.ts';
import { apart } from '../../src/latitudes/waterlines.tsx';
import { everyInk } from '../scenes.ts';

const metric = speaker('metric');
beforeAll(() => loadLater());

const kindAt = (degree: number): OnionType =>
  degree < 20 ? 'tropical-short' : degree < 36 ? 'short' : degree < 50 ? 'early-long' : 'northern-long';
const line = (step: number): BestOfDegree[] =>
  Array.from({ length: lastLatitude + 1 }, (_, degree) => degree)
    .filter((degree) => degree % step === 0)
    .map((degree) => ({
      degree,
      type: kindAt(degree),
      isGood: degree < 60,
      outcome: degree < 60 ? 'good' : 'not-ripe',
      startDay: 20_000,
      acrossMm: 60,
    }));

describe('the line from the equator toward the pole', () => {
  test('tells each class as one stretch, and where nothing comes good', () => {
    const { stretches, summary } = latitudeLineOf({ known: line(1), here: 52, side: 1, speaker: metric });
    expect(stretches.map(({ from, to }) => [from, to])).toEqual([
      [0, 35],
      [36, 59],
      [60, 70],
    ]);
    expect(summary).toContain('You stand at 52° north');
    expect(summary).toContain('0° to 35°, short-day');
    expect(summary).toContain('60° to 70°, none comes good');
  });

  test('hatches every degree from the first coarse answer on, at any width', () => {
    for (const step of [8, 1]) {
      for (const width of [260, 1100]) {
        const props = latitudeLineOf({ known: line(step), here: 0, side: -1, speaker: metric });
        const svg = svgText(<LatitudeLine id="x" width={width} {...props} />, {
          colours: everyInk,
          title: 'line',
        });
        const rects = [...svg.matchAll(/<rect x="([\d.]+)" y="46" width="([\d.]+)"/g)].map(([, x, wide]) => ({
          from: Number(x),
          to: Number(x) + Number(wide),
        }));
        const slices = rects.slice(0, -1);
        const frame = rects[rects.length - 1];
        expect(slices[0].from).toBeCloseTo(frame.from, 0);
        expect(slices[slices.length - 1].to).toBeCloseTo(frame.to, 0);
        slices.slice(1).forEach(({ from }, i) => {
          expect(from).toBeCloseTo(slices[i].to, 0);
        });
      }
    }
  });

  test('has a table with a row for each degree', () => {
    const { rows, head } = latitudeTableOf({ known: line(1), side: -1, speaker: metric });
    expect(rows).toHaveLength(71);
    expect(rows.every((row) => row.length === head.length)).toBe(true);
    expect(rows[30][0]).toBe('30° south');
  });
});

test('words of levels stand apart, in their order, about where they belong', () => {
  const feet = apart([10, 12, 14, 80, 84]);
  feet.slice(1).forEach((y, i) => {
    expect(y - feet[i]).toBeGreaterThanOrEqual(16 - 1e-9);
  });
  expect((feet[0] + feet[2]) / 2).toBeCloseTo(12, 6);
  expect(apart([5, 50])).toEqual([5, 50]);
});
