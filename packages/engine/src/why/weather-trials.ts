import { mean } from '../math/index.ts';
import { ramp } from '../plant/index.ts';
import { calendarYear, driverIndex } from '../season/index.ts';
import { bulb } from './acts.ts';
import { asLearnt, inClimate } from './other-weather.ts';
import type { Trial } from './season-facts.ts';
import type { CauseTrial, Otherwise } from './trials.ts';
import type { Change } from './what-if.ts';

const halfYear = 182;

/** A hot or a cool season differs so much from the usual, °C, and how often a season is one where no record tells. */
const odd = { warmerC: 3, coolerC: -2.5, unsaid: 0.06, recordPrior: 1 } as const;

/** Warmer and cooler seasons, or against a recorded one the usual. */
export function weatherTrials(trial: Trial): CauseTrial[] {
  const { site } = trial;
  if (site.record !== null) {
    const usual: Otherwise = {
      trial: { ...trial, site: asLearnt(site, site.reopened({ record: null })) },
      change: { code: 'usual-weather' },
    };
    const isHot = meanSince(trial) > meanSince(usual.trial);
    return [{ cause: isHot ? 'heat' : 'cool-season', prior: odd.recordPrior, told: true, without: [usual] }];
  }
  const tempC = meanSince(trial);
  const hot = inClimate(trial, odd.warmerC);
  const cool = inClimate(trial, odd.coolerC);
  return [
    {
      cause: 'heat',
      prior: climatePrior.heat * ramp(tempC, ...tooHotC),
      told: true,
      without: [{ trial: cool, change: other(odd.coolerC) }],
    },
    { cause: 'heat', prior: odd.unsaid, told: false, within: [hot], change: { code: 'usual-weather' } },
    {
      cause: 'cool-season',
      prior: climatePrior.cool * ramp(tempC, ...tooCoolC),
      acts: bulb,
      told: true,
      without: [{ trial: hot, change: other(odd.warmerC) }],
    },
    {
      cause: 'cool-season',
      prior: odd.unsaid,
      told: false,
      within: [cool],
      change: { code: 'usual-weather' },
    },
  ];
}

const other = (byC: number): Change => ({ code: 'other-weather', byC });

/** Half-years in which nobody would call the climate too hot or too cool for onions, and in which everybody would, °C (memory). */
const tooHotC = [17, 26] as const;
const tooCoolC = [17, 9] as const;
/** How readily a climate is called the cause, where crops are grown in it all the same (memory). */
const climatePrior = { heat: 0.7, cool: 0.3 } as const;

/** Warmth of the half-year from the start, °C. */
function meanSince({ site, plan }: Trial): number {
  const { tempMeanC } = site.generated('none', calendarYear(plan.startDay));
  const from = driverIndex(site, plan.startDay, 0);
  return mean(tempMeanC.subarray(from, from + halfYear));
}
