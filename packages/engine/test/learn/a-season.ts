import { type DayNumber, dayNumber, formatDay } from '../../src/calendar/index.ts';
import type { Observation } from '../../src/garden/index.ts';
import { drawOf } from '../../src/learn/index.ts';
import { usualValues } from '../../src/learn/parameters.ts';
import { dayTrace, openSite, type Plan, planDefaults, runnerOf } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const climate = climateOf({ latitudeDeg: 52, mean: [4, 5, 7, 10, 13, 16, 18, 18, 15, 11, 7, 4] });
export const site = openSite({ climate, years: 30, seed: 1 });
export const plan = {
  ...planDefaults,
  type: 'northern-long',
  start: 'sets',
  startDay: dayNumber(2027, 4, 1),
} as Plan;

export type Lived = { onsetDay: DayNumber; fellDay: DayNumber; leavesOn(day: DayNumber): number };

/** A season of one weather year of the site with plants of one's own. */
export function lived(
  own: Partial<typeof usualValues>,
  weatherYear = 4,
): Lived & { bulbGOn(day: DayNumber): number } {
  const draw = drawOf({ ...usualValues, ...own });
  const trace = dayTrace(800);
  const runner = runnerOf({ ...site, draws: () => Array.from({ length: 30 }, () => draw) }, plan);
  const { onsetOn, fellOn } = runner.season(weatherYear, trace);
  return {
    onsetDay: plan.startDay + onsetOn,
    fellDay: plan.startDay + fellOn,
    leavesOn: (day) => trace.leavesGreen[day - plan.startDay],
    bulbGOn: (day) => trace.bulbG[day - plan.startDay],
  };
}

export function noted(day: DayNumber, what: Partial<Observation>): Observation {
  return { id: formatDay(day), plantingId: null, date: formatDay(day), lookedAt: 10, ...what };
}

/** Leaf counts every ten days from 5 May to onset. */
export function leafCounts({ onsetDay, leavesOn }: Lived): Observation[] {
  const counts: Observation[] = [];
  for (let day = dayNumber(2027, 5, 5); day < onsetDay; day += 10)
    counts.push(noted(day, { leavesGreen: Math.round(10 * leavesOn(day)) / 10 }));
  return counts;
}
