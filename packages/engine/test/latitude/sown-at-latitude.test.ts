import { readClimateNodes } from '@neckfall/data/node';
import { getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { dayNumber, formatDay } from '../../src/calendar/index.ts';
import {
  bestOfSown,
  bestSown,
  coldestNightC,
  kindsSown,
  latitudeClimates,
  openLatitude,
  sameWinter,
  sowingYear,
  sunOverYear,
} from '../../src/latitude/index.ts';
import { classOfType, onionTypes } from '../../src/plant/index.ts';

const climates = latitudeClimates(readClimateNodes());
const march = dayNumber(2027, 3, 20);
const open = (latitudeDeg: number, warmerC = 0) => openLatitude(climates, latitudeDeg, warmerC);
const kindAt = (latitudeDeg: number, warmerC: number, type: (typeof onionTypes)[number], day = march) =>
  kindsSown(open(latitudeDeg, warmerC), day)[onionTypes.indexOf(type)];

describe('the days of a latitude', () => {
  // suncalc, a library of others, at the solstices of the gardener's year
  test.each([0, 12, 23, 37, 52, 60, -37, -52])('are those of another reckoning at %d°', (latitudeDeg) => {
    const hoursOn = (month: number) => {
      const { sunrise, sunset } = getTimes(new Date(Date.UTC(2027, month - 1, 21, 12)), latitudeDeg, 0);
      if (!sunrise || !sunset) throw new Error(`no rise and set at ${latitudeDeg}`);
      return (sunset.getTime() - sunrise.getTime()) / 3_600_000;
    };
    const { longestH, shortestH } = sunOverYear(open(latitudeDeg), march);
    expect(longestH).toBeCloseTo(Math.max(hoursOn(6), hoursOn(12)), 1);
    expect(shortestH).toBeCloseTo(Math.min(hoursOn(6), hoursOn(12)), 1);
  });

  test('grow longer in summer and shorter in winter toward the pole, until the sun stays up and down', () => {
    let before = sunOverYear(open(0), march);
    for (let degree = 1; degree <= 70; degree++) {
      const here = sunOverYear(open(degree), march);
      expect(here.longestH).toBeGreaterThanOrEqual(before.longestH);
      expect(here.shortestH).toBeLessThanOrEqual(before.shortestH);
      expect(here.upDays).toBeGreaterThanOrEqual(before.upDays);
      expect(here.downDays).toBeGreaterThanOrEqual(before.downDays);
      before = here;
    }
    expect(before.longestH).toBe(24);
    expect(before.downDays).toBeGreaterThan(30);
  });
});

describe('onions sown at a latitude', () => {
  test('on the equator short-day kinds bulb, northern long-day ones never', () => {
    for (const month of [1, 4, 7, 10]) {
      const day = dayNumber(2027, month, 1);
      expect(kindAt(0, 0, 'tropical-short', day).summary.onset.share).toBeGreaterThan(0.9);
      const northern = kindAt(0, 0, 'northern-long', day);
      expect(northern.summary.onset.share).toBe(0);
      expect(northern.longEnough).toBe('never');
    }
  });

  test('days long enough for a kind last from spring to late summer, and fewer for one that asks for more', () => {
    const spans = kindsSown(open(52), march).map(({ needSunUpH, longEnough }) => {
      if (typeof longEnough === 'string') throw new Error(longEnough);
      return { needSunUpH, days: longEnough.to - longEnough.from };
    });
    const byNeed = spans.toSorted((a, b) => a.needSunUpH - b.needSunUpH);
    byNeed.slice(1).forEach(({ days }, i) => {
      expect(days).toBeLessThanOrEqual(byNeed[i].days);
    });
  });

  test('finish sooner where it is warmer', () => {
    for (const latitudeDeg of [45, 52]) {
      const falls = [-2, 0, 2, 4].map(
        (warmerC) => kindAt(latitudeDeg, warmerC, 'northern-long').summary.neckFall.days!.p50,
      );
      falls.slice(1).forEach((day, i) => {
        expect(day).toBeLessThan(falls[i]);
      });
    }
  });

  test('do alike half a year on, south of the equator', () => {
    const north = kindAt(45, 0, 'northern-long').summary;
    const south = kindAt(-45, 0, 'northern-long', dayNumber(2027, 9, 20)).summary;
    expect(south.outcome).toBe(north.outcome);
    expect(Math.abs(south.bulbDiameterMm!.p50 - north.bulbDiameterMm!.p50)).toBeLessThan(6);
  });

  test('the best of those sown that day is one of them', () => {
    const site = open(52);
    const kinds = kindsSown(site, march);
    const best = bestOfSown(site, kinds);
    expect(classOfType[best.summary.plan.type]).toBe('long');
  });

  // short-day kinds to about 35°, long-day ones from about 37°: seed-packet lore of many countries, memory
  test('do best by class of day length: short nearer to the equator, long toward the pole', () => {
    const from = sowingYear(march, 1);
    const bestClass = (degree: number) => {
      const { summary, isGood } = bestSown(open(degree), from);
      return isGood ? classOfType[summary.plan.type] : null;
    };
    expect([5, 15, 25, 30].map(bestClass)).toEqual(['short', 'short', 'short', 'short']);
    expect([42, 47, 52].map(bestClass)).toEqual(['long', 'long', 'long']);
    expect(bestClass(70)).toBeNull();
  });

  test('the gardener’s year begins in August, in February south of the equator', () => {
    expect(formatDay(sowingYear(march, 52))).toBe('2026-08-01');
    expect(formatDay(sowingYear(dayNumber(2026, 8, 1), 52))).toBe('2026-08-01');
    expect(formatDay(sowingYear(march, -52))).toBe('2027-02-01');
  });
});

describe.each([1, -1] as const)('one coldest night at two latitudes, side %d', (side) => {
  const steps = sameWinter(climates, side, sowingYear(march, side));
  let step = steps.next();
  while (!step.done) step = steps.next();
  const found = step.value;

  test('is the same night, whose opposite kinds fail at each other’s place', () => {
    if (!found) throw new Error('nothing found');
    const [near, far] = found.opposite;
    for (const place of found.opposite) {
      expect(place.coldestC).toBeCloseTo(found.coldestNightC, 6);
      expect(place.best.isGood).toBe(true);
      expect(place.stranger.outcome).not.toBe('good');
    }
    expect(classOfType[near.best.summary.plan.type]).toBe('short');
    expect(classOfType[far.best.summary.plan.type]).toBe('long');
    expect(far.longestDayH).toBeGreaterThan(near.longestDayH);
    for (const { latitudeDeg, warmerC } of found.places)
      expect(coldestNightC(open(latitudeDeg, warmerC))).toBeCloseTo(found.coldestNightC, 6);
  });
});
