import {
  bulbDiameterMm,
  type DayNumber,
  dayTrace,
  type Plan,
  quantileSorted,
  runnerOf,
  type Site,
  stage,
} from '@neckfall/engine';

type Span = { low: number; high: number };

/** A crop on one day, over the years tried. Spans hold 8 years in 10 of those in which it stood. */
export type StandOn = {
  day: DayNumber;
  /** Of a plant in the bed; null where in most years none stands there. */
  leavesGreen: Span | null;
  /** mm; null where bulbs have not begun in most years. */
  bulbMm: Span | null;
  /** Share of years in which its tops are over, and in which frost has left nothing of it. */
  fallenShare: number;
  lostShare: number;
};

/** What should be seen of a crop on a day. */
export function standOn(site: Site, plan: Plan, day: DayNumber): StandOn {
  const at = day - plan.startDay;
  const leaves: number[] = [];
  const bulbs: number[] = [];
  let fallen = 0;
  let lost = 0;
  const runner = runnerOf(site, plan);
  const trace = dayTrace(longestTraceDays);
  for (let year = 0; year < site.years && at >= 0; year++) {
    trace.length = 0;
    const { reached, fellOn, plantedOn, aliveShare } = runner.season(year, trace);
    if (reached === stage.fallen && fellOn <= at) fallen++;
    else if (trace.length > 0 && at >= plantedOn && at < trace.length) {
      leaves.push(trace.leavesGreen[at]);
      if (trace.bulbing[at] >= 1) bulbs.push(bulbDiameterMm(trace.bulbG[at]));
    } else if (aliveShare === 0 && at >= trace.length) lost++;
  }
  return {
    day,
    leavesGreen: spanOf(leaves, site.years),
    bulbMm: spanOf(bulbs, site.years),
    fallenShare: fallen / site.years,
    lostShare: lost / site.years,
  };
}

/** As long as any season is followed, with room to spare. */
const longestTraceDays = 800;

/** Null where it was so in fewer than half of the years. */
function spanOf(values: number[], years: number): Span | null {
  if (values.length * 2 < years) return null;
  const sorted = Float64Array.from(values).sort();
  return { low: quantileSorted(sorted, 0.1), high: quantileSorted(sorted, 0.9) };
}
