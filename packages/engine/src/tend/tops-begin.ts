/**
 * Days from the first tops that go over to neck fall, when eight in ten lie: watering ends there. Common practice, no
 * source: growers stop when a tenth to a quarter of the tops are down.
 */
export const topsBeginDays = 10;
