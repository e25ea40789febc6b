import type { LeafCheckpoint } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { expect, test } from 'vitest';
import { leafCheckSentence } from '../../src/index.ts';

const british = speaker('metric');
/** 5 June 2027. */
const day = 20_819 + 155;
const checkpoint = (
  low: number,
  high: number,
  parting: LeafCheckpoint['parting'] = null,
): LeafCheckpoint => ({
  day,
  leavesGreen: { p10: low, p50: (low + high) / 2, p90: high },
  parting,
});

test('leaves that part good bulbs from small ones are said with what comes of either', () => {
  const parting = { smallUpTo: 6, goodMm: 60.4, smallMm: 47.8 };
  expect(leafCheckSentence(checkpoint(5.1, 8.2, parting), british)).toBe(
    'Count green leaves around 5 June, three weeks before bulbs start: with 7 or more, bulbs of about 60 mm are on course; with 6 or fewer expect small ones, about 48 mm.',
  );
  expect(leafCheckSentence(checkpoint(5.1, 8.2, parting), speaker('us'))).toMatch(
    /around June 5.+ 2\.4 in .+ 1\.9 in/,
  );
});

test('others are said as what should be seen', () => {
  expect(leafCheckSentence(checkpoint(6.6, 8.1), british)).toBe(
    'Around 5 June, three weeks before bulbs start, you should see 7–8 green leaves on each plant.',
  );
  expect(leafCheckSentence(checkpoint(0.8, 1.2), british)).toContain('see one green leaf on each plant');
});
