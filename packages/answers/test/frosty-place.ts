import {
  openSite,
  type Plan,
  type PlanForm,
  parseDay,
  planDefaults,
  type StartMethod,
} from '@neckfall/engine';

const monthly = (values: number[]) => Float64Array.from(values);
const steady = (value: number) => new Float64Array(12).fill(value);
/** An invented place with frosty winters and warm summers. */
export const site = openSite({
  climate: {
    latitudeDeg: 47,
    longitudeDeg: 4,
    elevationM: 200,
    tempMeanC: monthly([2, 3, 7, 11, 15, 18, 20, 20, 16, 11, 6, 3]),
    tempRangeC: steady(9),
    rainMm: steady(60),
    wetDays: steady(12),
    relativeHumidityPct: steady(75),
    sunshinePct: steady(45),
    wind10mMs: steady(3),
    frostNights: monthly([18, 15, 8, 2, 0, 0, 0, 0, 0, 1, 7, 16]),
    minTempSdC: steady(4),
  },
  years: 20,
  seed: 1,
});
const dates: Record<StartMethod, string> = {
  'direct-seed': '2027-03-25',
  'raised-seedlings': '2027-02-15',
  'bought-transplants': '2027-04-05',
  sets: '2027-03-28',
};
export const planOf = (start: StartMethod, more: Partial<PlanForm> = {}): Plan => ({
  ...planDefaults,
  type: 'northern-long',
  start,
  startDay: parseDay(dates[start])!,
  ...more,
});
