import type { DayNumber, SeasonDay } from '../calendar/index.ts';
import { quantileSorted } from '../math/index.ts';
import type { Spread } from '../season/index.ts';
import { greenLeavesOn, type Told } from './likelihood.ts';
import type { Sighting } from './sightings.ts';

/** How a crop stands by its last leaf count, against what was to be expected before any count. */
export type Standing = {
  day: DayNumber;
  leavesExpected: Spread;
  leavesSeen: number;
  /** Days behind where positive, ahead where negative; null where leaves no longer tell: the middling crop never has that count near the day. */
  daysBehind: number | null;
};

/** Days before and after the count that are looked through. */
const reachDays = 60;

/** Gathers what seasons without any observation would show about the day of the last leaf count; null: none was counted. */
export function standingGatherer(seen: readonly Sighting[], seasons: number) {
  const last = seen.findLast(({ leavesGreen }) => leavesGreen !== null);
  if (!last || last.leavesGreen === null) return null;
  const { at, leavesGreen: leavesSeen } = last;
  const from = Math.max(0, at - reachDays);
  const days = at + reachDays - from + 1;
  const leaves = Array.from({ length: days }, () => new Float64Array(seasons));
  let count = 0;
  return {
    add(told: Told): void {
      for (let day = 0; day < days; day++) leaves[day][count] = greenLeavesOn(told, from + day);
      count++;
    },
    standing(startDay: DayNumber): Standing {
      const middle = leaves.map((column) => quantileSorted(column.subarray(0, count).sort(), 0.5));
      const share = (of: number) => quantileSorted(leaves[at - from], of);
      return {
        day: startDay + at,
        leavesExpected: { p10: share(0.1), p50: share(0.5), p90: share(0.9) },
        leavesSeen,
        daysBehind: daysBehind(middle, at - from, leavesSeen),
      };
    },
  };
}

/** Whole days from the day on which the middling crop has this count to the day of the count. */
export function daysBehind(middle: readonly number[], at: SeasonDay, seen: number): number | null {
  if (seen >= middle[at]) {
    const reached = middle.findIndex((leaves, day) => day >= at && leaves >= seen);
    return reached < 0 ? null : at - reached;
  }
  // while leaves come: once old ones die faster, fewer of them is no sign of an earlier day
  for (let day = at - 1; day >= 0; day--) {
    if (middle[day] > middle[day + 1] + 0.01 && middle[day] > seen + 0.5) return null;
    if (middle[day] <= seen) return at - day;
  }
  return null;
}
