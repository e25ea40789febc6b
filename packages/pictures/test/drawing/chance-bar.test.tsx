import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ChanceBar } from '../../src/drawing/chance-bar.tsx';
import { svgText } from '../../src/drawing/svg-text.ts';
import { everyInk } from '../scenes.ts';

const discs = (share: number) =>
  svgText(<ChanceBar share={share} />, { colours: everyInk, title: 'x' })
    .match(/ d="([^"]*)"/g)!
    .map((d) =>
      [...d.matchAll(/a([\d.]+) \1 0 1 0 ([\d.]+) 0/g)].map(([, r, across]) => [Number(r), Number(across)]),
    );

test('ten discs are drawn, and as many filled as there are tenths', () => {
  for (const [share, filled] of [
    [0, 0],
    [0.04, 1],
    [0.5, 5],
    [0.55, 6],
    [1, 10],
  ] as const)
    expect(discs(share).map((all) => all.length)).toEqual([10, filled]);
});

test('each is round, whatever the share', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
      for (const [r, across] of discs(share).flat()) expect(across).toBeCloseTo(2 * r, 9);
    }),
    { seed: 20261125, numRuns: 200 },
  );
});
