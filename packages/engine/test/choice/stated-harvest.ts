import type { Harvest } from '../../src/choice/harvest.ts';

/** A good crop: every season ends well, on full bulbs, 140 days from the start. */
export const goodHarvest: Harvest = { goodShare: 1, smallShare: 0, boltedShare: 0, dryG: 13, days: 140 };
