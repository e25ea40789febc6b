import { type DayRow, dayNumber, medianSeasonDays, runPlan, type SeasonSummary } from '@neckfall/engine';
import { loadLater, speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import {
  cropOn,
  kindsSentence,
  lineSentence,
  onWords,
  type SetBeside,
  startsHeadline,
  togetherDate,
  togetherHeadline,
  togetherTable,
  zoneSentence,
} from '../../src/index.ts';
import { planOf, site } from '../frosty-place.ts';

await loadLater();
const british = speaker('metric');
const american = speaker('us');
const june = dayNumber(2027, 6, 21);
const december = dayNumber(2027, 12, 21);

type Given = {
  type?: SeasonSummary['plan']['type'];
  onset?: number | null;
  share?: number;
  wide?: number;
  outcome?: SeasonSummary['outcome'];
  latitudeDeg?: number;
  coldestC?: number;
};

/** A place whose season is made up. */
function place(name: string, given: Given = {}): SetBeside {
  const { type = 'northern-long', onset = june, share = 1, wide = 70, outcome = 'good' } = given;
  const spread = (day: number) => ({ share, days: { p10: day - 4, p50: day, p90: day + 4 } });
  const never = { share: 0, days: null };
  const summary = {
    plan: { type, start: 'sets', startDay: dayNumber(2027, 3, 25) },
    years: 30,
    outcome,
    gamble: false,
    onset: onset === null ? never : spread(onset),
    neckFall: onset === null ? never : spread(onset + 50),
    bulbDiameterMm: onset === null ? null : { p10: wide - 9, p50: wide, p90: wide + 9 },
    leavesMadeAtOnset: onset === null ? null : { p10: 7, p50: 8, p90: 9 },
    seasonShares: { [outcome]: 0.8, good: outcome === 'good' ? 0.8 : 0 },
  } as unknown as SeasonSummary;
  const { latitudeDeg = 50, coldestC = -6 } = given;
  return { name, latitudeDeg, summary, rows: [], coldestC, needSunUpH: 14.2, longestH: 16, shortestH: 8 };
}

const on = (line: SetBeside, sunUpH: number, day = june) => ({ ...line, sunUpH, day });

describe('the headline of places side by side', () => {
  test('tells both days and both dates, and where bulbs never start', () => {
    const oslo = on(place('Oslo', { onset: dayNumber(2027, 6, 4) }), 18.81);
    const nairobi = on(place('Nairobi', { onset: null, outcome: 'no-bulb', latitudeDeg: -1 }), 12.2);
    expect(togetherHeadline([oslo, nairobi], british)).toBe(
      'On 21 June days last 18 h 49 min in Oslo and 12 h 12 min in Nairobi: bulbs start 4 June in Oslo and never in Nairobi.',
    );
    expect(togetherHeadline([nairobi], british)).toBe(
      'On 21 June days last about 12 h 12 min in Nairobi, and bulbs never start.',
    );
  });

  test('counts what comes in fewer than half of the years as never', () => {
    const rarely = on(place('A', { share: 0.4 }), 16);
    expect(togetherHeadline([rarely, on(place('B'), 14)], british)).toContain('and never in A.');
  });

  test('of many it tells the first and the last, and of both halves of the globe each', () => {
    const lines = ['A', 'B', 'C', 'D'].map((name, i) => on(place(name, { onset: june + i * 10 }), 16 - i));
    expect(togetherHeadline(lines, british)).toBe(
      'On 21 June days last from 13 h in D to 16 h in A: bulbs start first in A, 21 June, and last in D, 21 July.',
    );
    const south = on(place('E', { latitudeDeg: -40, onset: december }), 15, december);
    const both = togetherHeadline([...lines, south], british);
    expect(both).toContain('On 21 June in the north and 21 December in the south days last');
    expect(both).toContain('21 June in A, 1 July in B, 11 July in C, 21 July in D and 21 December in E.');
  });

  test('calls days alike that differ by less than a quarter of an hour', () => {
    const lines = [on(place('A'), 16), on(place('B'), 16.2)];
    expect(togetherHeadline(lines, british)).toMatch(/^On 21 June days last about 16 h 12 min in A and B: /);
  });

  test('gives one date where all have one', () => {
    expect(togetherDate([{ day: december, latitudeDeg: -40 }], british)).toBe('21 December');
    expect(togetherDate([{ day: june, latitudeDeg: 1 }], american)).toBe('June 21');
  });
});

describe('kinds and winters side by side', () => {
  const seattle = place('Seattle', { coldestC: -5.9 });
  const dallas = place('Dallas', { coldestC: -6, type: 'short' });

  test('names which kind does best where', () => {
    expect(kindsSentence([seattle, dallas, place('Lyon')], british)).toBe(
      'What does best: northern long-day onions in Seattle and Lyon and short-day onions in Dallas.',
    );
    expect(kindsSentence([seattle, place('Reykjavík', { outcome: 'not-ripe' })], british)).toContain(
      'no kind well in Reykjavík',
    );
  });

  test('says that a map of winter cold is not enough where two winters are alike and their onions are not', () => {
    expect(zoneSentence([seattle, dallas], british)).toMatch(
      /in Seattle \(.6\s?°C\) and in Dallas \(.6\s?°C\).+ long-day onions do best in Seattle and short-day onions in Dallas/,
    );
    expect(zoneSentence([seattle, place('Lyon')], british)).toBeNull();
    expect(zoneSentence([seattle, place('Delhi', { coldestC: -4.3, type: 'short' })], british)).toBeNull();
    const middle = place('Atlanta', { coldestC: -5.9, type: 'intermediate' });
    expect(zoneSentence([middle, seattle, dallas], british)).not.toContain('Atlanta');
  });
});

describe('a line', () => {
  test('says what comes of it', () => {
    expect(lineSentence(place('Lyon'), british)).toBe(
      'Northern long-day onions from sets, begun 25 March: bulbs start 21 June, tops go over 10 August, 70 mm across; good bulbs in 8 years in 10.',
    );
    expect(lineSentence(place('Lyon'), american)).toContain('tops fall August 10, 2.8 in across');
    expect(lineSentence(place('Nairobi', { onset: null, outcome: 'no-bulb' }), british)).toMatch(
      /begun 25 March: bulbs never start; leaves but no bulbs in 8 years in 10\.$/,
    );
  });

  test('has a row in the table for each column', () => {
    const { head, rows } = togetherTable([place('A'), place('B', { onset: null })], 'places', british);
    for (const row of rows) expect(row).toHaveLength(head.length);
    expect(rows[1]).toContain('never');
  });
});

describe('starts side by side', () => {
  test('the widest and the smallest bulbs are named, and those that make none', () => {
    const lines = [
      place('sets planted 25 March', { wide: 64 }),
      place('seed sown in place 20 August', { wide: 78, onset: dayNumber(2027, 5, 20) }),
      place('sets planted 1 July', { onset: null }),
    ];
    expect(startsHeadline(lines, 'Lyon', british)).toBe(
      'Lyon: of these starts, the widest bulbs, 78 mm across, come of seed sown in place 20 August, and the smallest, 64 mm, of sets planted 25 March; bulbs start from 20 May to 21 June. No bulbs come of sets planted 1 July.',
    );
    expect(startsHeadline([lines[0]], 'Lyon', british)).toContain('they start about 21 June');
    expect(startsHeadline([lines[2]], 'Lyon', british)).toBe('Lyon: none of these starts makes bulbs.');
  });
});

describe('a crop on a day', () => {
  const plan = planOf('sets');
  const summary = runPlan(site, plan);
  const rows: DayRow[] = medianSeasonDays(site, plan);

  test('goes through its stages in order, its leaves and bulb as in the middling season', () => {
    const order = ['before', 'started', 'leaves', 'bulb', 'over'];
    const seen: string[] = [];
    let leaves = 0;
    for (let day = plan.startDay - 20; day < rows.at(-1)!.day + 40; day++) {
      const now = cropOn(summary, rows, day);
      if (seen.at(-1) !== now.stage) seen.push(now.stage);
      expect(now.leaves).toBeGreaterThanOrEqual(leaves);
      leaves = now.leaves;
    }
    expect(seen).toEqual(order);
    const onset = Math.round(summary.onset.days!.p50);
    expect(cropOn(summary, rows, onset - 1).stage).toBe('leaves');
    expect(cropOn(summary, rows, onset).stage).toBe('bulb');
    expect(leaves).toBe(Math.floor(rows.at(-1)!.leavesMade));
  });

  test('is told with the length of the day and how warm it gets', () => {
    const at = (cropDay: number) => onWords({ summary, rows, cropDay, sunUpH: 15.5, highC: 22 }, british);
    expect(at(plan.startDay - 1)).toMatchObject({ leaves: '–', across: '–', stage: 'not yet started' });
    expect(at(plan.startDay - 1).sentence).toMatch(
      /^27 March: a day of 15 h 30 min, 22\s?°C at its warmest; not yet started\.$/,
    );
    expect(at(rows.at(-1)!.day + 5).sentence).toMatch(/; tops over, the bulb \d\d mm across\.$/);
  });

  test('that never ripens is over without a bulb', () => {
    const green = { ...summary, neckFall: { share: 0, days: null }, onset: { share: 0, days: null } };
    const short = rows.filter(({ bulbing }) => bulbing < 1);
    expect(cropOn(green, short, short.at(-1)!.day + 1).stage).toBe('ended');
    expect(cropOn(green, short, short.at(-1)!.day).stage).toBe('leaves');
  });
});
