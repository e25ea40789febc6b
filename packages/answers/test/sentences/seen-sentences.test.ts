import {
  dayNumber,
  type LearntSeason,
  type LearntShift,
  type SeasonSummary,
  type Standing,
  usualBelief,
} from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { seenSentences, shiftSentence } from '../../src/index.ts';

const metric = speaker('metric');
const american = speaker('us');
const asOf = dayNumber(2027, 6, 14);

const pace: LearntShift = {
  parameter: 'phyllochron',
  usual: 1,
  usualSd: 0.1,
  now: 1.08,
  sd: 0.04,
  neckFallDays: 5.2,
};

const standing: Standing = {
  day: asOf,
  leavesExpected: { p10: 6, p50: 7, p90: 8 },
  leavesSeen: 5,
  daysBehind: 9,
};

const learnt: LearntSeason = {
  asOf,
  seasons: null,
  effectiveDraws: 200,
  observations: 3,
  later: 0,
  liftedOn: null,
  learnt: [pace],
  standing,
  belief: usualBelief(),
};

const days = (day: number) => ({ p10: day - 10, p50: day, p90: day + 10 });

/** As much of a season as is told of. */
function summary(onset: number, fall: number, bulbMm: number, water = 'watered') {
  return {
    plan: { water },
    onset: { share: 1, days: days(onset) },
    neckFall: { share: 1, days: days(fall) },
    bulbDiameterMm: days(bulbMm),
  } as unknown as SeasonSummary;
}

const august = (day: number) => dayNumber(2027, 8, day);
const expected = summary(dayNumber(2027, 7, 1), august(15), 62);
const said = (of: Partial<LearntSeason>, now: SeasonSummary, voice = metric) =>
  seenSentences({ ...learnt, ...of }, now, expected, false, voice);

describe('what was learnt', () => {
  test('is told in per cent, with what it makes of the tops', () => {
    expect(shiftSentence(pace, metric)).toBe(
      'Your leaves come 8% slower than is usual for the kind: tops go over about 5 days later.',
    );
    expect(shiftSentence({ ...pace, now: 0.9, neckFallDays: -1.2 }, american)).toBe(
      'Your leaves come 10% faster than is usual for the kind: tops fall about 1 day sooner.',
    );
  });

  test('of a day length is told in minutes', () => {
    const need: LearntShift = {
      ...pace,
      parameter: 'criticalH',
      usual: 0,
      now: -0.4,
      sd: 0.1,
      neckFallDays: -4,
    };
    expect(shiftSentence(need, metric)).toBe(
      'To start bulbs, your onions want days about 25 minutes shorter than is usual for the kind: tops go over about 4 days sooner.',
    );
  });

  test('leaves the tops out where it does not move them', () => {
    expect(shiftSentence({ ...pace, parameter: 'growth', neckFallDays: 0 }, metric)).toBe(
      'Your plants grow 8% more than is usual for the kind.',
    );
    expect(shiftSentence({ ...pace, neckFallDays: null }, metric)).toBe(
      'Your leaves come 8% slower than is usual for the kind.',
    );
  });

  test('is not told while it may be nothing', () => {
    expect(shiftSentence({ ...pace, sd: 0.09 }, metric)).toBeNull();
    expect(shiftSentence({ ...pace, now: 1.004, sd: 0.001 }, metric)).toBeNull();
  });
});

describe('a crop that is behind', () => {
  const late = summary(dayNumber(2027, 7, 9), august(24), 55);

  test('is told by how much, what that means and what can still be done', () => {
    // what it makes of the tops is told once
    expect(said({}, late)).toEqual([
      'Your leaves come 8% slower than is usual for the kind.',
      'You should see 6–8 green leaves on a plant now; you have 5: about 9 days behind.',
      'Tops then go over around 24 August, 9 days later than expected, on bulbs of about 55 mm instead of 62 mm.',
      'Bulbs start in about 25 days, around 9 July, and every leaf made by then makes them larger: keep the bed weeded, keep it watered, and if you feed, do so now and not later, as its label says.',
    ]);
  });

  test('is told to wait where feed would come too late, and of smaller bulbs once they have started', () => {
    expect(said({}, summary(asOf + 5, august(24), 55)).at(-1)).toMatch(
      /^Bulbs start around 19 June, too soon/,
    );
    expect(said({}, summary(asOf - 2, august(24), 55)).at(-1)).toMatch(/^Bulbs have started/);
  });

  test('is told by the day of the count where that is gone by', () => {
    const counted = { ...standing, day: asOf - 10 };
    expect(said({ standing: counted }, late)[1]).toBe(
      'On 4 June there should have been 6–8 green leaves on a plant; you counted 5: about 9 days behind.',
    );
  });

  test('is told no more of a count three weeks old', () => {
    const old = { ...standing, day: asOf - 22 };
    expect(said({ standing: old }, late)).toEqual([
      'Your leaves come 8% slower than is usual for the kind: tops go over about 5 days later.',
    ]);
  });

  test('within what is usual is told against its middle', () => {
    const within = {
      ...standing,
      leavesExpected: { p10: 2.6, p50: 4, p90: 5.4 },
      leavesSeen: 5,
      daysBehind: -14,
    };
    expect(said({ standing: within }, late)[1]).toBe(
      'You should see 3–5 green leaves on a plant now; you have 5: within that, but about 14 days ahead of a middling crop.',
    );
    const first = { ...standing, leavesExpected: { p10: 1, p50: 1, p90: 1 }, leavesSeen: 2, daysBehind: -9 };
    expect(said({ standing: first }, late)[1]).toBe(
      'You should see 1 green leaf on a plant now; you have 2: about 9 days ahead.',
    );
  });

  test('is told nothing to do once it is lifted, nor what its tops will do', () => {
    expect(said({ liftedOn: asOf - 1 }, late)).toEqual([
      'Your leaves come 8% slower than is usual for the kind.',
      'You should see 6–8 green leaves on a plant now; you have 5: about 9 days behind.',
      'Lifted on 13 June: what is said of later days is what the crop would have done if left.',
    ]);
  });
});

describe('a crop that is', () => {
  test('ahead is told so, and has nothing to make up', () => {
    const ahead = { ...standing, leavesSeen: 9, daysBehind: -12 };
    expect(said({ learnt: [], standing: ahead }, expected)).toEqual([
      'You should see 6–8 green leaves on a plant now; you have 9: about 12 days ahead.',
      'Tops then still go over around 15 August, on bulbs of about 62 mm, as expected.',
    ]);
  });

  test('beyond all that is usual is told so, and what that means', () => {
    const beyond = { ...standing, leavesSeen: 10, daysBehind: null };
    expect(said({ learnt: [], standing: beyond }, expected)).toEqual([
      'You should see 6–8 green leaves on a plant now; you have 10: more than is usual then or later.',
      'Tops then still go over around 15 August, on bulbs of about 62 mm, as expected.',
    ]);
  });

  test('as it should be is told so, and nothing more', () => {
    const usual = { ...standing, leavesSeen: 7, daysBehind: 0 };
    expect(said({ learnt: [], standing: usual }, expected)).toEqual([
      'Nothing you noted is out of the ordinary for the kind so far.',
      'You should see 6–8 green leaves on a plant now; you have 7, as it should be.',
    ]);
  });

  test('not looked at is told nothing', () => {
    expect(said({ observations: 0, learnt: [], standing: null }, expected)).toEqual([]);
  });
});

test('what was left out and what earlier plantings told is said', () => {
  const sentences = seenSentences(
    { ...learnt, learnt: [], standing: null, observations: 0, later: 2 },
    expected,
    expected,
    true,
    metric,
  );
  expect(sentences).toEqual([
    'What earlier plantings of this onion showed here is taken into account.',
    '2 notes of after 14 June are left out.',
  ]);
});
