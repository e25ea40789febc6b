import { civilDate, classOfType, dayNumber, startMethods, symptoms, whyOf } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { cropUnderWay } from '../../src/worker/crop-under-way.ts';
import { whyAhead } from '../../src/worker/why-ahead.ts';
import { temperate } from './a-site.ts';

const today = dayNumber(2027, 9, 20);
const asked = {
  site: temperate,
  crop: { class: 'long' },
  starts: startMethods,
  start: 'sets',
  startDay: dayNumber(2027, 3, 20),
  today,
  options: {},
  seen: [],
  said: ['start'],
  isAbout: false,
  symptoms: ['flowered'],
  answers: {},
  noticed: null,
  keepsMonths: [5, 7],
  store: 'cellar',
  isStoreSaid: false,
} as const;
const unsaid = { ...asked, crop: null, start: null, startDay: null } as const;

describe('why a crop came to what was seen', () => {
  test('is asked of the engine for the crop that was told', () => {
    const { plan, answer } = whyAhead(asked);
    expect(plan).toMatchObject({ start: 'sets', startDay: asked.startDay });
    const { site } = cropUnderWay(asked);
    const { keepsMonths, store: _, said, ...rest } = asked;
    const climate = { tempC: [], humidityPct: [] } as never;
    // nothing was seen in store, so its air makes no difference
    const told = whyOf(site, { ...rest, plan, said: new Set(said), keepsMonths, store: climate });
    expect(answer).toEqual(told);
  });

  test('nothing seen is nothing asked: the crop alone is told', () => {
    const { answer, plan } = whyAhead({ ...asked, symptoms: [] });
    expect(answer).toBeNull();
    expect(plan.start).toBe('sets');
  });

  test('of a crop of which nothing was said the start is taken that is usual, long enough ago to have shown it', () => {
    for (const symptom of ['dry-tips', 'small', 'sprouted', 'died-in-winter'] as const) {
      const { plan } = whyAhead({ ...unsaid, symptoms: [symptom] });
      expect(plan.startDay).toBeLessThan(today);
      expect(plan.startDay).toBeGreaterThan(today - 2 * 366);
    }
    const winter = whyAhead({ ...unsaid, symptoms: ['died-in-winter'] }).plan.startDay;
    expect(civilDate(winter).month).toBeGreaterThanOrEqual(7);
  });

  test('what was said stays, whatever is taken beside it', () => {
    const { plan } = whyAhead({ ...unsaid, start: 'direct-seed' });
    expect(plan.start).toBe('direct-seed');
    const onDay = whyAhead({ ...unsaid, startDay: dayNumber(2027, 4, 1) });
    expect(onDay.plan.startDay).toBe(dayNumber(2027, 4, 1));
  });

  test('says whether packets of its class hold the onion of next year’s plan', () => {
    for (const symptom of ['flowered', 'no-bulb', 'small'] as const)
      for (const printed of ['short', 'intermediate', 'long'] as const) {
        const { answer, isNextOfClass } = whyAhead({
          ...asked,
          crop: { class: printed },
          symptoms: [symptom],
        });
        const { type, start, startDay } = answer!.nextYear.plan;
        const held = cropUnderWay({ ...asked, crop: { class: classOfType[type] }, start, startDay }).plan
          .type;
        expect(isNextOfClass).toBe(held === type);
      }
  });

  test('any thing that may be seen has an answer', () => {
    for (const symptom of symptoms) {
      const { answer } = whyAhead({ ...asked, symptoms: [symptom] });
      const sum = answer!.causes.reduce((all, { probability }) => all + probability, answer!.unseen);
      expect(sum).toBeCloseTo(1, 9);
    }
  });
});
