import { type Runner, type Site, stage } from '../../packages/engine/src/index.ts';

/** What is answered of a plan: medians over the site's weather years, days from the start. */
export type Answered = {
  /** Null where bulbs start in fewer than half of the years. */
  onsetOn: number | null;
  /** Null where tops go over in fewer than half of the years. */
  fellOn: number | null;
  leavesMade: number;
  /** Of the years with bulbs, g fresh. */
  bulbG: number;
  bulbDryG: number;
  boltedShare: number;
  aliveShare: number;
};

/** @param runner standing at the plan's start day */
export function answered(site: Site, runner: Runner): Answered {
  const onset: number[] = [];
  const fell: number[] = [];
  const leaves: number[] = [];
  const dry: number[] = [];
  const bolted: number[] = [];
  const alive: number[] = [];
  for (let year = 0; year < site.years; year++) {
    const outcome = runner.quickSeason(year);
    bolted.push(outcome.boltedShare);
    alive.push(outcome.aliveShare);
    if (outcome.reached < stage.onset) continue;
    onset.push(outcome.onsetOn);
    leaves.push(outcome.leavesMade);
    dry.push(outcome.bulbDryG);
    if (outcome.reached === stage.fallen) fell.push(outcome.fellOn);
  }
  const usual = (of: number[]) => (2 * of.length < site.years ? null : median(of));
  const bulbDryG = dry.length === 0 ? 0 : median(dry);
  return {
    onsetOn: usual(onset),
    fellOn: usual(fell),
    leavesMade: leaves.length === 0 ? 0 : median(leaves),
    bulbG: bulbDryG / runner.crop.type.dryMatterShare,
    bulbDryG,
    boltedShare: median(bolted),
    aliveShare: median(alive),
  };
}

function median(of: number[]): number {
  of.sort((a, b) => a - b);
  return (of[(of.length - 1) >> 1] + of[of.length >> 1]) / 2;
}
