import { dayNumber } from '../calendar/index.ts';
import { hoursFromHome, type OnionType, onionTypes } from '../plant/index.ts';
import { fullSizeDryG, limits } from './judge.ts';
import { stage } from './outcome.ts';
import { type Plan, startedOn } from './plan.ts';
import { runnerOf } from './run.ts';
import type { Site } from './site.ts';

const datesTried = 16;
/** 1 January of a common year, the same for all plans: the mean climate knows no year, and who asks first must not matter. */
const newYear = dayNumber(2027, 1, 1);

/**
 * Dry matter of tropical reds that is enough where they are at home, g: about 65 g fresh, 50 mm, as markets of the tropics
 * take them from their rains too (common practice, no source).
 */
const tropicalDryG = 8;

/** Dry matter that is enough, whatever larger bulbs a place grows, g. */
export function enoughDryG({ longestDayH }: Site, type: OnionType): number {
  const isRed = type === 'tropical-short' && hoursFromHome(type, longestDayH, false) === 0;
  return isRed ? tropicalDryG : fullSizeDryG;
}

/**
 * Dry matter of the best bulb the place grows this way (same start, spacing, water, cover), over the types at home there
 * and dates in the mean climate, g; 0 where nothing ripens. No more than is enough. Kept
 * with the site.
 */
export function referenceBulbG(site: Site, plan: Plan): number {
  const { type: _, traits: __, startDay: ___, plantOutDay: ____, ...way } = { plantOutDay: null, ...plan };
  const key = Object.values(way).join('|');
  let best = site.referenceG.get(key);
  if (best === undefined) {
    best = 0;
    for (const type of typesAtHome(site)) {
      if (best >= fullSizeDryG) break;
      const runner = runnerOf(site, startedOn({ ...plan, type, traits: null }, newYear));
      for (let i = 0; i < datesTried && best < fullSizeDryG; i++) {
        runner.moveTo(newYear + Math.round((i * 365) / datesTried), null);
        const outcome = runner.meanSeason();
        const sound =
          outcome.reached === stage.fallen &&
          outcome.boltedShare <= limits.bolted &&
          outcome.aliveShare >= limits.killed;
        if (sound && outcome.bulbDryG > best) best = outcome.bulbDryG;
      }
    }
    site.referenceG.set(key, best);
  }
  return Math.min(best, enoughDryG(site, plan.type));
}

/** A kind from far off that would grow larger makes no local bulb small. */
function typesAtHome({ longestDayH }: Site): OnionType[] {
  return onionTypes.filter((type) => hoursFromHome(type, longestDayH, false) === 0);
}
