import { atlasRegions } from '@neckfall/answers';
import { loadLandOutline } from '@neckfall/data/node';
import { type AtlasEntry, dayNumber, gridPoints, onionTypes } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { svgText } from '../../src/drawing/svg-text.ts';
import { AtlasMap, type MapKeyWords, type MapShows, mapShows } from '../../src/map/index.ts';
import { everyInk } from '../scenes.ts';

const outline = loadLandOutline();
const words: MapKeyWords & { summary: string } = {
  summary: 'a map',
  kinds: onionTypes,
  rows: 'seven of ten',
  bare: 'hardly ever',
  unknown: 'no mark',
  hand: 'as on a clock',
  quarters: ['q1', 'q2', 'q3', 'q4'],
  discs: ['small', 'middling', 'large'],
};
const usual: AtlasEntry = {
  class: 'long',
  type: 'northern-long',
  start: 'sets',
  isAtHome: true,
  startDay: dayNumber(2027, 4, 1),
  goodShare: 1,
  outcome: 'good',
  gamble: false,
  neckFallDay: dayNumber(2027, 8, 10),
  bulbDiameterMm: 70,
  worth: 1,
};

function draw(
  shows: MapShows,
  region: keyof typeof atlasRegions,
  stepDeg: number,
  entryAt: (at: number) => AtlasEntry,
) {
  const points = [...gridPoints(atlasRegions[region], stepDeg)].map((point, at) => ({
    ...point,
    entry: entryAt(at),
  }));
  const map = { region: atlasRegions[region], points, stepDeg, shows, outline, words, width: 900 };
  return svgText(<AtlasMap {...map} />, { colours: everyInk, title: 'map' });
}

const mixed = (at: number): AtlasEntry => ({
  ...usual,
  type: onionTypes[at % onionTypes.length],
  goodShare: (at % 11) / 10,
  startDay: usual.startDay + ((at * 37) % 365),
  neckFallDay: at % 5 === 0 ? null : usual.startDay + ((at * 53) % 365),
});

test.each(mapShows)('%s: few paths, however many points, and every word of the key', (shows) => {
  const svg = draw(shows, 'all', 4, mixed);
  expect(svg.match(/<path/g)!.length).toBeLessThanOrEqual(40);
  expect(svg).not.toMatch(/NaN|undefined|null/);
  const said: Record<MapShows, readonly string[]> = {
    kind: [...words.kinds, words.rows],
    good: [words.rows],
    start: [words.hand, ...words.quarters],
    tops: [words.hand, ...words.quarters],
    size: words.discs,
  };
  for (const word of [...said[shows], words.bare, words.unknown]) expect(svg).toContain(`>${word}<`);
});

/** Lines of a look on the ground, as their ends. */
function rowsIn(svg: string): number[][] {
  const ground = /<g clip-path[^>]*>([\s\S]*?)<\/g>/.exec(svg)![1];
  return [...ground.matchAll(/M([\d.-]+) ([\d.-]+)L([\d.-]+) ([\d.-]+)(?![\d.L -])/g)].map((match) =>
    match.slice(1).map(Number),
  );
}

test('a large field has as many rows as good years in ten, and slopes with its kind', () => {
  for (const [share, rows] of [
    [1, 10],
    [0.7, 7],
    [0.1, 1],
  ]) {
    const svg = draw('kind', 'new-zealand', 8, () => ({ ...usual, goodShare: share }));
    const fields = [...gridPoints(atlasRegions['new-zealand'], 8)].length;
    expect(rowsIn(svg)).toHaveLength(fields * rows);
  }
  const slope = (type: AtlasEntry['type']) => {
    const [[x1, y1, x2, y2]] = rowsIn(draw('kind', 'new-zealand', 8, () => ({ ...usual, type })));
    return Math.atan2(Math.abs(y2 - y1), Math.abs(x2 - x1));
  };
  const slopes = onionTypes.map(slope);
  expect(slopes[0]).toBeCloseTo(0, 2);
  expect(slopes.at(-1)).toBeCloseTo(Math.PI / 2, 2);
  for (let at = 1; at < slopes.length; at++) expect(slopes[at]).toBeGreaterThan(slopes[at - 1]);
});

test('many small fields together have the share of rows that good years are', () => {
  const share = 0.4;
  const all = rowsIn(draw('good', 'all', 2, () => usual)).length;
  const some = rowsIn(draw('good', 'all', 2, () => ({ ...usual, goodShare: share }))).length;
  expect(some / all).toBeGreaterThan(share - 0.03);
  expect(some / all).toBeLessThan(share + 0.03);
});

test('ground where onions hardly ever come good is bare, whatever is shown', () => {
  for (const shows of mapShows) {
    const svg = draw(shows, 'south-america', 4, () => ({ ...usual, goodShare: 0.04 }));
    const ground = /<g clip-path[^>]*>([\s\S]*?)<\/g>/.exec(svg)![1];
    expect(ground.match(/<path/g)).toHaveLength(1);
  }
});
