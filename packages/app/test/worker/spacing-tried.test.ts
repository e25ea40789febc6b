import { dayNumber, densityOf, groundUnsaid, type Observation } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { cancelled, type Work } from '../../src/worker/protocol.ts';
import { seasonAhead } from '../../src/worker/season-ahead.ts';
import { spacingTried } from '../../src/worker/spacing-tried.ts';
import { temperate } from './a-site.ts';

const going: Work = { part: () => {}, pause: async () => {}, isCancelled: () => false };
const seen: Observation[] = [
  { id: 'a', plantingId: 'p', date: '2027-05-25', leavesGreen: 3, lookedAt: 10 },
  { id: 'b', plantingId: 'p', date: '2027-06-05', leavesGreen: 4, lookedAt: 10 },
];
const asked = {
  site: temperate,
  crop: { class: 'long' },
  starts: ['sets'],
  start: 'sets',
  startDay: dayNumber(2027, 3, 20),
  today: dayNumber(2027, 6, 10),
  options: { soil: 'clay', densityPerM2: 40 },
  seen,
} as const;

describe('spacings tried', () => {
  test('come to what the Season page has for each, with what was seen of the crop', async () => {
    const densities = [40, densityOf({ rowCm: 30, plantCm: 30, perStation: 4 }), 20];
    const tried = await spacingTried({ ...asked, densities }, going);
    expect(tried).toHaveLength(3);
    for (const [at, densityPerM2] of densities.entries()) {
      const { summary } = seasonAhead({
        ground: groundUnsaid,
        marks: [],
        keepsMonths: [5, 7],
        store: 'cellar',
        ...asked,
        options: { ...asked.options, densityPerM2 },
      });
      expect(tried[at]).toEqual(summary);
    }
    const [usual, , wide] = tried.map(({ bulbDiameterMm }) => bulbDiameterMm?.p50 ?? 0);
    expect(wide).toBeGreaterThan(usual);
  });

  test('are left off once nobody wants them', async () => {
    const pause = async () => {
      throw cancelled;
    };
    await expect(spacingTried({ ...asked, densities: [40] }, { ...going, pause })).rejects.toBe(cancelled);
  });
});
