// A season: sets of a northern long-day onion, planted on 25 March, in thirty years of generated weather.
import { siteAt } from '@neckfall/data';
import { readSiteAssets } from '@neckfall/data/node';
import { formatDay, parseDay, planDefaults, runPlan } from '@neckfall/engine';

// climate, warming and what growers of the district do, as `neckfall season --at 52.1,5.2` has them
const site = siteAt(readSiteAssets(), { latitudeDeg: 52.1, longitudeDeg: 5.2 });

const plan = { ...planDefaults, type: 'northern-long', start: 'sets', startDay: parseDay('2027-03-25') };
const { seasonShares, onset, neckFall, bulbDiameterMm, years } = runPlan(site, plan);

console.log(`good in ${Math.round(seasonShares.good * years)} of ${years} years`);
console.log(`bulbs begin  ${days(onset.days)}`);
console.log(`tops go over ${days(neckFall.days)}`);
console.log(`bulbs of ${bulbDiameterMm ? Math.round(bulbDiameterMm.p50) : '–'} mm in the middle year`);

// the 10th, 50th and 90th of a hundred years; null where it does not happen
function days(spread) {
  if (spread === null) return 'never';
  return `${formatDay(spread.p50)}, mostly ${formatDay(spread.p10)} to ${formatDay(spread.p90)}`;
}
