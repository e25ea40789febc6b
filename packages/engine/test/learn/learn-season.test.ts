import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import {
  beliefSite,
  type LearntParameter,
  type LearntSeason,
  learnSeason,
  learntSite,
  usualBelief,
} from '../../src/learn/index.ts';
import { seasonEstimate } from '../../src/learn/parameters.ts';
import { mean, standardDeviation } from '../../src/math/index.ts';
import { leafCheckpoint, medianSeasonDays, openSite, runPlan, spanParts } from '../../src/season/index.ts';
import { wetTropics } from '../weather/climates.ts';
import { leafCounts, lived, noted, plan, site } from './a-season.ts';

const end = dayNumber(2027, 12, 1);
const slow = lived({ phyllochron: 1.2 });
const slowCounts = leafCounts(slow);
const learntOf = (counts: Parameters<typeof learnSeason>[2], asOf = end) =>
  learnSeason(site, plan, counts, asOf);
const shift = ({ learnt }: LearntSeason, parameter: LearntParameter) => {
  const found = learnt.find((one) => one.parameter === parameter);
  if (!found) throw new Error(`nothing of ${parameter}`);
  return found;
};

describe('a season of which nothing was seen', () => {
  test.each([
    ['no observation', []],
    ['a note alone', [noted(dayNumber(2027, 5, 1), { note: 'Weeded' })]],
    ['what was seen later', [noted(end + 1, { leavesGreen: 5 })]],
    ['what was seen before the start', [noted(plan.startDay - 1, { leavesGreen: 5 })]],
  ])('with %s is the ordinary one, to the last digit', (_, observations) => {
    const learnt = learntOf(observations);
    expect(learnt).toMatchObject({ observations: 0, seasons: null, learnt: [], standing: null });
    expect(runPlan(learntSite(site, learnt), plan)).toEqual(runPlan(site, plan));
    expect(learnt.belief).toBeNull();
    const before = { ...usualBelief(), ripening: { mean: 1.1, sd: 0.1 } };
    const told = learnSeason(site, plan, observations, end, before);
    expect(told.belief).toEqual(before);
    expect(learntSite(site, told, before).draws()).toEqual(beliefSite(site, before).draws());
    expect(learntSite(site, told, before).draws()).not.toEqual(site.draws());
  });
});

describe('slow leaves that were counted', () => {
  const learnt = learntOf(slowCounts);
  const usual = runPlan(site, plan);
  const now = runPlan(learntSite(site, learnt), plan);

  test('are learnt as slow leaves, and move nothing that leaves do not tell of', () => {
    const pace = shift(learnt, 'phyllochron');
    expect(pace.now - 1).toBeGreaterThan(0.1);
    expect(pace.sd).toBeLessThan(pace.usualSd);
    const ripening = shift(learnt, 'ripening');
    expect(Math.abs(ripening.now - 1)).toBeLessThan(0.1);
    expect(ripening.sd).toBeGreaterThan(0.2);
    // sizes stand as long as no bulb was measured
    expect(learnt.learnt.map(({ parameter }) => parameter)).not.toContain('growth');
  });

  test('bring onset nearer to when it came, and say how many days of neck fall they make', () => {
    const error = (days: { p50: number } | null) => Math.abs((days?.p50 ?? 0) - slow.onsetDay);
    expect(error(now.onset.days)).toBeLessThan(error(usual.onset.days));
    const { neckFallDays } = shift(learnt, 'phyllochron');
    expect(neckFallDays).toBeGreaterThan(1);
    const moved = (now.neckFall.days?.p50 ?? 0) - (usual.neckFall.days?.p50 ?? 0);
    expect(Math.abs(moved - (neckFallDays ?? 0))).toBeLessThan(4);
  });

  test('give seasons worth many, of all weather years alike', () => {
    expect(learnt.effectiveDraws).toBeGreaterThan(100);
    const { draws, weatherYears } = learnt.seasons!;
    expect(draws).toHaveLength(300);
    const times = Array.from({ length: 30 }, (_, year) => weatherYears.filter((of) => of === year).length);
    expect(times.filter((count) => count > 0).length).toBeGreaterThanOrEqual(15);
    expect(Math.max(...times)).toBeLessThan(60);
  });

  test('say how far the crop is behind what was to be expected', () => {
    const { day, leavesExpected, leavesSeen, daysBehind } = learnt.standing!;
    expect(day).toBe(dayNumber(2027, 5, 5) + 10 * (slowCounts.length - 1));
    expect(leavesSeen).toBe(slowCounts.at(-1)?.leavesGreen);
    expect(leavesSeen).toBeLessThan(leavesExpected.p50);
    expect(daysBehind).toBeGreaterThan(3);
    expect(daysBehind).toBeLessThan(25);
  });

  test('are the same again, in any order, and as a copy between threads', () => {
    expect(learntOf(slowCounts.toReversed())).toEqual(learnt);
    expect(structuredClone(learnt)).toEqual(learnt);
    const reseeded = learnSeason({ ...site, seed: 2 }, plan, slowCounts, end);
    expect(reseeded.seasons?.draws).not.toEqual(learnt.seasons?.draws);
  });

  test('leave what they do not tell of as open for next year as it was', () => {
    const { ripening, phyllochron, growth } = learnt.belief!;
    const usualNow = usualBelief();
    expect(ripening.sd / usualNow.ripening.sd).toBeGreaterThan(0.93);
    expect(Math.abs(ripening.mean - 1)).toBeLessThan(0.05);
    expect(phyllochron.sd).toBeLessThan(usualNow.phyllochron.sd);
    expect(phyllochron.mean).toBeGreaterThan(1.05);
    expect(growth).toBeNull();
  });

  test('leave the site as it was', () => {
    expect(runPlan(site, plan)).toEqual(usual);
  });

  test('answer all that a site is asked', () => {
    const learntOn = learntSite(site, learnt);
    // three hundred seasons of thirty weather years
    expect(learntOn.years).toBe(300);
    expect(now.years).toBe(30);
    expect(medianSeasonDays(learntOn, plan).length).toBeGreaterThan(50);
    const { neckFallDays } = spanParts(learntOn, now);
    expect(neckFallDays!.kind).toBeGreaterThan(0);
    expect(leafCheckpoint(learntOn, now)?.leavesGreen.p50).toBeGreaterThan(0);
  });

  test('are told of up to the day asked about', () => {
    const early = learntOf(slowCounts, dayNumber(2027, 5, 20));
    expect(early.observations).toBe(2);
    expect(early.later).toBe(slowCounts.length - 2);
  });
});

test('one slip of the pen among many counts does not rule', () => {
  const right = shift(learntOf(slowCounts), 'phyllochron').now;
  const slipped = slowCounts.map((count, at) => (at === 2 ? { ...count, leavesGreen: 14 } : count));
  expect(Math.abs(shift(learntOf(slipped), 'phyllochron').now - right)).toBeLessThan(0.05);
});

test('a count of more leaves than any draw has does not bring learning down', () => {
  const wild = learntOf(slowCounts.map((count) => ({ ...count, leavesGreen: 30 })));
  expect(wild.effectiveDraws).toBeGreaterThan(20);
  expect(runPlan(learntSite(site, wild), plan).neckFall.share).toBeGreaterThan(0);
});

test('growth that an earlier season told of stays as open as it is believed, where no bulb is measured', () => {
  const before = { ...usualBelief(), growth: { mean: 0.8, sd: 0.1 } };
  const learnt = learnSeason(site, plan, slowCounts, end, before);
  const growth = learnt.seasons!.draws.map(({ growthFactor }) => growthFactor);
  const believed = seasonEstimate(before, 'growth');
  expect(mean(growth)).toBeCloseTo(believed.mean, 1);
  expect(standardDeviation(growth) / believed.sd).toBeGreaterThan(0.8);
});

test('where tops stay up, nothing is told of when they go over', () => {
  // long-day onions near the equator
  const tropics = openSite({ climate: wetTropics, years: 30, seed: 1 });
  const { learnt } = learnSeason(tropics, plan, leafCounts(slow), end);
  expect(learnt.map(({ neckFallDays }) => neckFallDays)).toEqual([null, null, null]);
});

describe('bulbs and necks', () => {
  const late = lived({ criticalH: 0.5, phyllochron: 1.1 });
  const width = (day: number, ratio: number) => noted(day, { neckMm: 14, bulbMm: 14 * ratio });

  test('seen without a bulb put off its start, seen with one bring it near', () => {
    const none = learntOf([width(late.onsetDay - 2, 1.4)]);
    const some = learntOf([width(late.onsetDay - 30, 2.3)]);
    const onset = (learnt: LearntSeason) => runPlan(learntSite(site, learnt), plan).onset.days!.p50;
    const usual = runPlan(site, plan).onset.days!.p50;
    expect(onset(none)).toBeGreaterThan(usual);
    expect(onset(some)).toBeLessThan(usual);
  });

  test('of large bulbs tell of more growth, and so of larger bulbs', () => {
    const day = slow.fellDay - 10;
    const usualMm = 10 * Math.cbrt(slow.bulbGOn(day) / 0.5);
    const large = learntOf([...slowCounts, noted(day, { bulbMm: 1.2 * usualMm })]);
    expect(shift(large, 'growth').now).toBeGreaterThan(1.1);
    const bulb = (of: LearntSeason) => runPlan(learntSite(site, of), plan).bulbDiameterMm!.p50;
    expect(bulb(large)).toBeGreaterThan(bulb(learntOf(slowCounts)));
  });

  test('weighed after lifting tell of growth too', () => {
    const light = learntOf([
      noted(slow.fellDay + 5, { lifted: true }),
      noted(slow.fellDay + 20, { weighedKg: 1.5, bulbCount: 50 }),
    ]);
    expect(shift(light, 'growth').now).toBeLessThan(0.9);
    expect(light.liftedOn).toBe(slow.fellDay + 5);
  });
});

describe('tops', () => {
  const fell = (learnt: LearntSeason) => runPlan(learntSite(site, learnt), plan).neckFall.days!;

  test('half over tell the day within a few days', () => {
    const day = dayNumber(2027, 8, 25);
    const { p10, p50, p90 } = fell(learntOf([noted(day, { topsOverShare: 0.5 })]));
    expect(p50).toBeGreaterThan(day - 1);
    expect(p50).toBeLessThan(day + 10);
    expect(p90 - p10).toBeLessThan(15);
  });

  test('of which a share is told by eye tell much the same', () => {
    const day = dayNumber(2027, 8, 25);
    const { lookedAt, ...byEye } = noted(day, { topsOverShare: 0.5 });
    expect(lookedAt).toBe(10);
    const counted = fell(learntOf([noted(day, { topsOverShare: 0.5 })]));
    expect(Math.abs(fell(learntOf([byEye])).p50 - counted.p50)).toBeLessThanOrEqual(3);
  });

  test('of which none is over put the day off; all over put it back', () => {
    const usual = runPlan(site, plan).neckFall.days!.p50;
    expect(fell(learntOf([noted(usual, { topsOverShare: 0 })])).p10).toBeGreaterThan(usual);
    expect(fell(learntOf([noted(usual - 10, { topsOverShare: 1 })])).p90).toBeLessThan(usual);
  });

  test('of a lifted crop tell nothing any more', () => {
    const day = dayNumber(2027, 8, 1);
    const lifted = noted(day, { lifted: true });
    expect(learntOf([lifted, noted(day + 20, { topsOverShare: 0, leavesGreen: 4 })]).observations).toBe(0);
  });
});

test('a site as believed, with nothing believed, has the draws of the site', () => {
  expect(beliefSite(site, usualBelief()).draws()).toEqual(site.draws());
});

test('bulbs weighed after they were lifted have grown no more since', () => {
  const half = lived({});
  const lifted = half.onsetDay + 25;
  const onTheDay = noted(lifted, {
    lifted: true,
    weighedKg: (half.bulbGOn(lifted) * 20) / 1000,
    bulbCount: 20,
  });
  const { lifted: _, weighedKg = 0, bulbCount = 0, ...rest } = onTheDay;
  const later = noted(lifted + 30, { weighedKg, bulbCount });
  const grown = (seen: Parameters<typeof learnSeason>[2]) => shift(learntOf(seen), 'growth').now;
  expect(grown([{ ...rest, lifted: true }, later])).toBe(grown([onTheDay]));
});
