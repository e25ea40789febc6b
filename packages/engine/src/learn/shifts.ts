import { mean } from '../math/index.ts';
import { type Draw, type Plan, runnerOf, type Site, stage } from '../season/index.ts';
import {
  drawOf,
  type Estimate,
  type LearntParameter,
  learntParameters,
  usualSpread,
  usualValues,
  valuesOf,
} from './parameters.ts';

/** What a season has shown of one parameter, against the kind. */
export type LearntShift = {
  parameter: LearntParameter;
  /** The middle of the kind and the spread about it; of the day length needed in h from the type's, else factors. */
  usual: number;
  usualSd: number;
  now: number;
  sd: number;
  /** Days later (earlier: negative) that tops go over for it alone; null where they mostly don't go over. */
  neckFallDays: number | null;
};

/** Shifts of the middle of the learnt seasons, and what each makes of neck fall: the same seasons with it put back. */
export function shiftsOf(
  site: Site,
  plan: Plan,
  found: Record<LearntParameter, Estimate | null>,
): LearntShift[] {
  const fellNow = falls(site, plan, site.draws());
  return learntParameters.flatMap((parameter) => {
    const estimate = found[parameter];
    if (estimate === null) return [];
    const usual = usualValues[parameter];
    const by = usual - estimate.mean;
    const back = site.draws().map((draw) => {
      const values = valuesOf(draw);
      return drawOf({ ...values, [parameter]: values[parameter] + by });
    });
    return [
      {
        parameter,
        usual,
        usualSd: usualSpread[parameter],
        now: estimate.mean,
        sd: estimate.sd,
        neckFallDays: meanDelay(falls(site, plan, back), fellNow),
      },
    ];
  });
}

/** So many seasons tell a mean of differences, each of a season from itself, to a fraction of a day. */
const compared = 100;

/** Days from the start to neck fall of the first seasons; NaN where tops stay up. */
function falls(site: Site, plan: Plan, draws: readonly Draw[]): Float64Array {
  const runner = runnerOf({ ...site, draws: () => draws }, plan);
  return Float64Array.from({ length: Math.min(compared, draws.length) }, (_, season) => {
    const { reached, fellOn } = runner.quickSeason(season);
    return reached === stage.fallen ? fellOn : Number.NaN;
  });
}

/** Null where tops go over both ways in fewer than half of the seasons. */
function meanDelay(before: Float64Array, after: Float64Array): number | null {
  const delays = after.map((day, season) => day - before[season]).filter((days) => !Number.isNaN(days));
  return delays.length * 2 < after.length ? null : mean(delays);
}
