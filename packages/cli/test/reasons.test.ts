import {
  choiceReasonCodes,
  climateAt,
  dayLengthClasses,
  openSite,
  reasonCodes,
  startMethods,
  tryStarts,
  waysOf,
} from '@neckfall/engine';
import { allMessages, speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { openAssets } from '../src/place/assets.ts';

const english = await allMessages('en');

const nodes = openAssets().climate();
const { reason } = speaker('metric');

/** Cold, temperate, hot, high, tropical and southern. */
const newYear = 20_819;
const places = [
  [64.8, -147.7, 135],
  [57.1, -2.1, 40],
  [45.8, 4.8, 175],
  [30.3, -97.7, 150],
  [4.6, -74.1, 2550],
  [9.0, 38.7, 2350],
  [-34.6, -58.4, 20],
] as const;

test('every code has a message, and no message is without a code', () => {
  const keys = Object.keys(english).filter((key) => key.startsWith('reason.'));
  const codes = [...reasonCodes, ...choiceReasonCodes];
  expect(keys.sort()).toEqual(codes.map((code) => `reason.${code}`).sort());
});

describe.each(places)('at %f, %f', (latitude, longitude, elevation) => {
  test('every outcome has its sentence', () => {
    const site = openSite({ climate: climateAt(nodes, latitude, longitude, elevation), years: 3, seed: 1 });
    for (const dayLengthClass of dayLengthClasses) {
      for (const start of startMethods) {
        const answer = tryStarts(site, waysOf(site, { class: dayLengthClass }, [start]), {}, newYear);
        for (const reasoned of [answer, ...answer.starts.map(({ summary }) => summary)]) {
          expect(reasonCodes).toContain(reasoned.reason.code);
          expect(reason(reasoned.reason)).toMatch(/^[A-Z].*\.$/);
        }
      }
    }
  });
});
