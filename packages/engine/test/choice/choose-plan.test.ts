import { expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { type CropAsked, choosePlan, plantOutFor, surveyOf } from '../../src/choice/index.ts';
import { startMethods } from '../../src/plant/index.ts';
import { openSite } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const site = openSite({
  climate: climateOf({ latitudeDeg: 47, mean: [2, 3, 7, 11, 15, 18, 20, 20, 16, 11, 6, 3] }),
  years: 4,
  seed: 1,
});
const today = dayNumber(2027, 2, 1);
const crop: CropAsked = { class: 'long' };
const unasked = () => {
  throw new Error('nothing was left to choose');
};

test('what was said is taken without a look at the place', () => {
  const asked = { crop, starts: ['sets'], start: 'sets', startDay: today + 50 } as const;
  expect(choosePlan(site, asked, today, {}, unasked)).toEqual({ crop, start: 'sets', startDay: today + 50 });
});

test('without any wish what is in time today is taken, else what leads at its best start', () => {
  const survey = surveyOf(site, today);
  const lead = survey.now() ?? survey.lead();
  const asked = { crop: null, starts: startMethods, start: null, startDay: null };
  expect(choosePlan(site, asked, today, {}, () => survey)).toEqual({
    crop: { class: lead.class },
    start: lead.bestStart,
    startDay: lead.summary.plan.startDay,
  });
});

test('an onion is started in one of its ways, in the year ahead', () => {
  const asked = { crop, starts: ['sets', 'direct-seed'], start: null, startDay: null } as const;
  const chosen = choosePlan(site, asked, today, {}, unasked);
  expect(asked.starts).toContain(chosen.start);
  expect(chosen.startDay).toBeGreaterThanOrEqual(today);
  expect(chosen.startDay).toBeLessThan(today + 366);
});

test('a day of planting out counts for raised seedlings alone, after the sowing and within a winter', () => {
  const raised = { start: 'raised-seedlings', startDay: 100 } as const;
  expect(plantOutFor(150, raised)).toBe(150);
  expect(plantOutFor(150, { ...raised, start: 'sets' })).toBeNull();
  for (const day of [null, 99, 100, 371]) expect(plantOutFor(day, raised)).toBeNull();
});
