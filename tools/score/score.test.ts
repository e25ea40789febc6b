import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  dayLengthClasses,
  defaultPlantValues,
  startMethods,
  verdicts,
} from '../../packages/engine/src/index.ts';
import { unseenValues } from '../calibrate/fold-values.ts';
import { readCalendarRows } from './calendar-rows.ts';
import { densityErrors, densityFit } from './density-trials.ts';
import { hardTests } from './hard-tests.ts';
import { leastScore } from './least-score.ts';
import { nullMisses } from './null-model.ts';
import { type Figures, figuresOf, scoreRows } from './score.ts';
import { missesOfStory, readStories, tellStory } from './stories.ts';
import { timingScore } from './timing.ts';
import { timingRows } from './timing-rows.ts';

const fixture = fileURLToPath(new URL('./fixtures/calendars.json', import.meta.url));
const shared = process.env.NECKFALL_SHARED ? join(process.env.NECKFALL_SHARED, 'data', 'calendars.json') : '';

/** Figures of places left out; sources of the rows stand in the file, one by one. */
function holds(path: string, least: (typeof leastScore)[keyof typeof leastScore]) {
  const rows = readCalendarRows(path);
  const found = figuresOf(scoreRows(rows, (row) => unseenValues(row.latitudeDeg, row.longitudeDeg)));
  const packet = timingScore(
    nullMisses(timingRows(rows).filter((row) => row.weight === 1)),
    () => 1,
  ).meanCentreErrorDays;
  const said = JSON.stringify({ found, least, nullModelCentreErrorDays: packet }, null, 1);
  for (const name of ['within10', 'within7', 'coverage', 'balancedAccuracy'] satisfies (keyof Figures)[])
    expect(found[name], `${name} fell\n${said}`).toBeGreaterThanOrEqual(least[name]);
  expect(found.centreErrorDays / packet, `centre error rose\n${said}`).toBeLessThanOrEqual(
    least.centreAgainstNullModel,
  );
}

describe('published calendars, each judged by parameters that never saw its neighbourhood', () => {
  it('are told as well as the committed score says', () => holds(fixture, leastScore.fixture));

  it.skipIf(!existsSync(shared))('are so in the whole data folder too (needs NECKFALL_SHARED)', () =>
    holds(shared, leastScore.folder),
  );
});

describe('the committed rows', () => {
  const rows = readCalendarRows(fixture);
  it('are at least 40, each with a source', () => {
    expect(rows.length).toBeGreaterThanOrEqual(40);
    for (const row of rows) expect(row.source, row.id).not.toBe('');
  });
  it('cover every class, way of starting, half of the earth and verdict', () => {
    expect(new Set(rows.map((row) => row.class))).toEqual(new Set(dayLengthClasses));
    expect(new Set(rows.map((row) => row.start))).toEqual(new Set(startMethods));
    expect(new Set(rows.map((row) => row.latitudeDeg > 0)).size).toBe(2);
    expect(new Set(rows.map((row) => row.outcome ?? 'good'))).toEqual(new Set(verdicts));
  });
});

describe('bulb mass over plants per m²', () => {
  const { levels, shapes } = densityErrors(densityFit(defaultPlantValues));
  // Trials of one district differ by more than this among themselves; places and dates are mostly memory.
  const farther = new Set(['Hokkaido']);
  it.each([...levels].filter(([district]) => !farther.has(district)))(
    'is met within 25 % at %s',
    (_, log) => {
      expect(Math.abs(Math.exp(log) - 1)).toBeLessThanOrEqual(0.25);
    },
  );
  it.each([...shapes])('follows the curve of %s within 25 %', (id, logs) => {
    const off = Math.max(...logs.map((log) => Math.abs(Math.exp(log) - 1)));
    if (flatter.has(id)) expect(off, 'the misfit is gone: take it off the list').toBeGreaterThan(0.25);
    else expect(off).toBeLessThanOrEqual(0.25);
  });
});

/** Trials whose lone plants grew far larger than the model's. */
const flatter = new Set<string>(['virginia', 'ituporanga']);

describe('hard tests of the model', () => {
  for (const { name, source, holds: isTrue, found } of hardTests()) {
    it(`${name} (${source}); found: ${found}`, () => expect(isTrue).toBe(true));
  }
});

/** Stories the model does not tell in full, with the reason. Everything else must be met. */
const knownMisfits: Record<string, string> = {
  'nashik-kharif':
    'one tropical type stands for all: monsoon crops start bulbs five days sooner here than kharif kinds do',
  'ituporanga-crioula':
    'one intermediate type stands for all: this kind starts bulbs ten days sooner, on half the leaves',
};

describe('stories an expert would tell (memory, with tolerance)', () => {
  for (const story of readStories()) {
    it(story.id, () => {
      const misses = missesOfStory(story, tellStory(story));
      if (knownMisfits[story.id]) expect(misses, 'the misfit is gone: take it off the list').not.toEqual([]);
      else expect(misses).toEqual([]);
    });
  }
});
