import type { SiteAsked } from '../../src/worker/site.ts';

const monthly = (value: number) => new Float64Array(12).fill(value);

/** A temperate place between two seas, invented. */
export const temperate: SiteAsked = {
  climate: {
    latitudeDeg: 48,
    longitudeDeg: 4,
    elevationM: 200,
    tempMeanC: Float64Array.of(2, 3, 7, 11, 15, 18, 20, 20, 16, 11, 6, 3),
    tempRangeC: monthly(9),
    rainMm: monthly(60),
    wetDays: monthly(12),
    relativeHumidityPct: monthly(75),
    sunshinePct: monthly(45),
    wind10mMs: monthly(3),
    frostNights: Float64Array.of(18, 15, 8, 2, 0, 0, 0, 0, 0, 1, 7, 16),
    minTempSdC: monthly(4),
  },
  warmerC: 1,
  frostHollow: false,
  years: 3,
  seed: 1,
  practice: [],
  atHand: [],
};

/** Mild and windy at 41° S, where packets of long-day seed and long-day sets hold different onions; invented. */
export const windySouth: SiteAsked = {
  climate: {
    latitudeDeg: -41,
    longitudeDeg: 175,
    elevationM: 20,
    tempMeanC: Float64Array.of(17, 17, 16, 14, 12, 10, 9, 9.5, 11, 12, 13.5, 15.5),
    tempRangeC: monthly(7),
    rainMm: monthly(90),
    wetDays: monthly(10),
    relativeHumidityPct: monthly(78),
    sunshinePct: monthly(48),
    wind10mMs: monthly(5),
    frostNights: Float64Array.of(0, 0, 0, 0, 1, 3, 4, 3, 1, 0, 0, 0),
    minTempSdC: monthly(3),
  },
  warmerC: 0,
  frostHollow: false,
  years: 6,
  seed: 1,
  practice: [],
  atHand: ['sets'],
};
