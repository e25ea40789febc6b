import { quantileSorted } from '../math/index.ts';
import { plantValuesOf } from '../plant/index.ts';
import { judge, type Plan, type Runner, type SeasonSummary, type Site, stage } from '../season/index.ts';

/** What came of a plan: of many seasons or of one. */
export type Harvest = {
  goodShare: number;
  /** Share of seasons whose bulbs are sound but small. */
  smallShare: number;
  boltedShare: number;
  /** Dry matter of the bulb, g. */
  dryG: number;
  /** Days from the start to neck fall; null where none comes. */
  days: number | null;
};

export function harvestOf(site: Site, { plan, ...s }: SeasonSummary): Harvest {
  return {
    goodShare: s.seasonShares.good,
    smallShare: s.seasonShares.small,
    boltedShare: s.boltedPlantsShare?.p50 ?? 0,
    dryG: (s.bulbMassG?.p50 ?? 0) * plantValuesOf(site.values, plan).dryMatterShare,
    days: s.neckFall.days && s.neckFall.days.p50 - plan.startDay,
  };
}

/**
 * The same from a runner that stands at its start day, without the rest of a summary, over the first `years` weather
 * years, by default all.
 */
export function harvester(
  site: Site,
  plan: Plan,
  runner: Runner,
  referenceDryG: number,
): (years?: number) => Harvest {
  const { dryMatterShare } = runner.crop.type;
  const bolted = new Float64Array(site.years);
  const dryG = new Float64Array(site.years);
  const fell = new Float64Array(site.years);
  return (years = site.years) => {
    let good = 0;
    let small = 0;
    let up = 0;
    let bulbs = 0;
    let over = 0;
    for (let year = 0; year < years; year++) {
      const outcome = runner.quickSeason(year);
      const verdict = judge(outcome, plan, dryMatterShare, referenceDryG);
      if (verdict === 'good') good++;
      else if (verdict === 'small') small++;
      if (outcome.reached >= stage.emerged) bolted[up++] = outcome.boltedShare;
      if (outcome.reached >= stage.onset) dryG[bulbs++] = outcome.bulbDryG;
      if (outcome.reached === stage.fallen) fell[over++] = outcome.fellOn;
    }
    return {
      goodShare: good / years,
      smallShare: small / years,
      boltedShare: up > 0 ? median(bolted, up) : 0,
      dryG: bulbs > 0 ? median(dryG, bulbs) : 0,
      days: over > 0 ? Math.round(median(fell, over)) : null,
    };
  };
}

function median(values: Float64Array, count: number): number {
  return quantileSorted(values.subarray(0, count).sort(), 0.5);
}
