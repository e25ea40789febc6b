import { describe, expect, test } from 'vitest';
import { greenLeavesOn, logLikelihood, type Told } from '../../src/learn/likelihood.ts';
import { sightingsOf } from '../../src/learn/sightings.ts';
import { mostGreenLeaves, plantSpreadCv } from '../../src/plant/index.ts';
import { dayTrace } from '../../src/season/index.ts';
import { emptyOutcome, stage } from '../../src/season/outcome.ts';
import { noted } from './a-season.ts';

const startDay = 20_000;

/** Comes up on day 10, stands in its bed from day 50 with two leaves, a leaf every ten days; tops over on day 150. */
function told(fellOn = 150): Told {
  const trace = dayTrace(200);
  for (let day = 50; day <= fellOn; day++)
    trace.put(day, 2 + (day - 50) / 10, Math.min(9, 2 + (day - 50) / 10), 1, 0, 0, 0);
  const outcome = { ...emptyOutcome(), emergedOn: 10, plantedOn: 50, leavesPlanted: 2, fellOn };
  return { trace, outcome: { ...outcome, reached: stage.fallen, onsetOn: 100 }, dryMatterShare: 0.1 };
}

/** The same with bulbs that grow to 100 g, one plant in five of which flowers. */
const withBulbs: Told = (() => {
  const { trace, outcome, dryMatterShare } = told();
  for (let day = 100; day <= 150; day++) trace.bulbG[day] = 2 * (day - 100);
  return { trace, outcome: { ...outcome, bulbDryG: 10, boltedShare: 0.2 }, dryMatterShare };
})();

const likely = (observation: Parameters<typeof noted>[1], day: number, of = told()) => {
  const { seen } = sightingsOf([noted(startDay + day, observation)], startDay, startDay + 400);
  return logLikelihood(seen, of);
};

describe('green leaves', () => {
  test('grow in the tray, in the bed, and die once tops are over', () => {
    const on = (day: number) => greenLeavesOn(told(), day);
    expect([5, 30, 50, 70].map(on)).toEqual([0, 1, 2, 4]);
    expect(on(150)).toBe(9);
    expect(on(157)).toBeCloseTo(4.5, 9);
    expect(on(170)).toBe(0);
  });
});

test('nothing weighs before it is planted, whatever a season before this one left in its trace', () => {
  const fresh = told();
  const used = told();
  used.trace.bulbG.fill(80, 0, 50);
  const weighed = { weighedKg: 1, bulbCount: 10 };
  expect(likely(weighed, 40, used)).toBe(likely(weighed, 40, fresh));
});

describe('what was seen is the likelier', () => {
  test('the nearer the count, and surer with more plants', () => {
    expect(likely({ leavesGreen: 4 }, 70)).toBeGreaterThan(likely({ leavesGreen: 5 }, 70));
    const gap = (lookedAt: number) =>
      likely({ leavesGreen: 4, lookedAt }, 70) - likely({ leavesGreen: 5, lookedAt }, 70);
    expect(gap(20)).toBeGreaterThan(gap(1));
    // what the model misses on all plants alike, no number of them makes good
    expect(gap(100_000) / gap(1000)).toBeLessThan(1.1);
  });

  test('in more leaves than any season of the model has, no less than in the most it has', () => {
    expect(likely({ leavesGreen: mostGreenLeaves + 4 }, 150)).toBe(
      likely({ leavesGreen: mostGreenLeaves }, 150),
    );
  });

  test('the nearer the tops: 8 in 10 are over on the day of neck fall', () => {
    const shares = [0.3, 0.5, 0.8, 0.95].map((topsOverShare) => likely({ topsOverShare, lookedAt: 40 }, 150));
    expect(Math.max(...shares)).toBe(shares[2]);
    expect(likely({ topsOverShare: 0 }, 120)).toBeGreaterThan(likely({ topsOverShare: 0 }, 150));
    expect(likely({ topsOverShare: 1 }, 170)).toBeGreaterThan(likely({ topsOverShare: 1 }, 150));
  });

  test('where bulbs twice as wide as their necks are seen after onset', () => {
    const ratio = (of: number, day: number) => likely({ neckMm: 15, bulbMm: 15 * of }, day);
    expect(ratio(1.5, 85)).toBeGreaterThan(ratio(1.5, 115));
    expect(ratio(2.1, 115)).toBeGreaterThan(ratio(2.1, 85));
  });

  test('where bulbs that have begun are as wide as the season makes them', () => {
    const width = (bulbMm: number) => likely({ neckMm: 12, bulbMm }, 140, withBulbs);
    expect(width(60)).toBeGreaterThan(width(120));
    expect(width(60)).toBeGreaterThan(width(30));
  });

  test('in bulbs on an average heavier than the median plant, as masses are log-normal', () => {
    // the mean of a log-normal law is its median times √(1 + CV²): any textbook of statistics
    const weighed = (meanG: number) => likely({ weighedKg: meanG / 10, bulbCount: 100 }, 150, withBulbs);
    const mean = 100 * Math.sqrt(1 + plantSpreadCv ** 2);
    expect(weighed(mean)).toBeGreaterThan(weighed(100));
    expect(weighed(mean)).toBeGreaterThan(weighed(mean ** 2 / 100));
  });

  test('the nearer the share in flower, but before bulbs start fewer tell nothing: more may yet come', () => {
    const flowering = (floweringCount: number, day: number) =>
      likely({ floweringCount, lookedAt: 100 }, day, withBulbs);
    for (const day of [80, 120]) expect(flowering(60, day)).toBeLessThan(flowering(30, day));
    expect(flowering(0, 80)).toBe(flowering(20, 80));
    expect(flowering(0, 120)).toBeLessThan(flowering(10, 120));
    expect(flowering(10, 120)).toBeLessThan(flowering(20, 120));
  });

  test('than anything however odd, which is never impossible', () => {
    for (const odd of [{ leavesGreen: 30 }, { topsOverShare: 1 }, { bulbMm: 300 }, { neckMm: 1, bulbMm: 90 }])
      for (const day of [0, 20, 60, 149, 300]) expect(likely(odd, day)).toBeGreaterThan(-60);
  });
});

test('a width is told as a density: surer seasons give more where it fits, and all come to the same in sum', () => {
  const sumOn = (day: number) => {
    let sum = 0;
    for (let log = -8; log < 14; log += 0.01)
      sum += Math.exp(likely({ bulbMm: Math.exp(log) }, day, withBulbs));
    return sum;
  };
  expect(sumOn(150) / sumOn(101)).toBeCloseTo(1, 2);
});

describe('observations', () => {
  test('count flowers against the stand last counted, bulbs by their mean', () => {
    const { seen } = sightingsOf(
      [
        noted(startDay + 100, { floweringCount: 6 }),
        noted(startDay + 40, { standCount: 60 }),
        noted(startDay + 200, { weighedKg: 6, bulbCount: 40 }),
      ],
      startDay,
      startDay + 400,
    );
    expect(seen.map(({ flowering }) => flowering)).toEqual([{ share: 0.1, of: 60 }, null]);
    expect(seen[1].weighed).toEqual({ meanG: 150, bulbs: 40 });
  });
});
