import { dayNumber, groundUnsaid, startMethods } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { cropUnderWay } from '../../src/worker/crop-under-way.ts';
import { temperate } from './a-site.ts';

const asked = {
  site: temperate,
  crop: { class: 'long' },
  starts: startMethods,
  start: 'sets',
  startDay: dayNumber(2027, 3, 20),
  today: dayNumber(2027, 6, 1),
  options: {},
  seen: [],
} as const;
const seen = [{ id: 'o', plantingId: 'p', date: '2027-05-20', leavesGreen: 4, lookedAt: 5 }];

test('a crop is worked out once for whatever is asked of it, and anew for another', () => {
  const crop = cropUnderWay(asked);
  expect(cropUnderWay({ ...asked, ...{ ground: groundUnsaid } })).toBe(crop);
  const others = [
    { today: asked.today + 1 },
    { startDay: asked.startDay + 7 },
    { start: 'direct-seed' },
    { crop: { class: 'short' } },
    { options: { densityPerM2: 90 } },
    { seen },
    { site: { ...temperate, frostHollow: true } },
  ] as const;
  for (const other of others) expect(cropUnderWay({ ...asked, ...other })).not.toBe(crop);
});
