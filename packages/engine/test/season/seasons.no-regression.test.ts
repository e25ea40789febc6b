import { expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { onionTypes, startMethods } from '../../src/plant/index.ts';
import { dayTrace, openSite, planDefaults, runnerOf } from '../../src/season/index.ts';
import { climateOf, wetWinterCoast } from '../weather/climates.ts';

/*
 * What forty plans came to when the model was last fitted, so that no change of the kernel moves an answer unseen. These
 * are our own figures and prove nothing: the truths are in the other tests. After a refit: `npx vitest run -u` here.
 */
const snowy = climateOf({ latitudeDeg: 60, mean: [-6, -6, -2, 4, 10, 15, 17, 16, 11, 6, 1, -3] });
const sites = [
  { name: 'wet winter coast', site: openSite({ climate: wetWinterCoast, years: 4, seed: 1 }) },
  { name: 'snowy north', site: openSite({ climate: snowy, years: 4, seed: 1 }) },
];
const covers = ['none', 'fleece', 'tunnel'] as const;
const tellEvery = 20;

const figures = (numbers: readonly number[]) => numbers.map((n) => Number(n.toPrecision(7))).join(' ');

/** One weather year of each plan: how it ended, and the plant on every twentieth day. */
function told(): string {
  const lines: string[] = [];
  let plans = 0;
  for (const { name, site } of sites)
    for (const type of onionTypes)
      for (const start of startMethods) {
        const startDay = dayNumber(2027, plans % 3 === 0 ? 9 : 4, 1 + (plans % 28));
        const cover = covers[plans % covers.length];
        const water = plans % 2 === 0 ? 'watered' : 'rain';
        const plan = { ...planDefaults, type, start, cover, water, startDay, plantOutDay: null } as const;
        const trace = dayTrace(900);
        const outcome = runnerOf(site, plan).season(plans % 4, trace);
        lines.push(`${name}, ${type}, ${start}, ${cover}, ${water}, day ${startDay}`);
        lines.push(`  ${figures(Object.values(outcome).map(Number))}`);
        for (let day = 0; day < trace.length; day += tellEvery) {
          const { leavesMade, leavesGreen, shootG, bulbG, bulbing, ripening } = trace;
          const plant = [leavesMade, leavesGreen, shootG, bulbG, bulbing, ripening].map((of) => of[day]);
          if (plant.some((n) => n !== 0)) lines.push(`  ${day}: ${figures(plant)}`);
        }
        plans++;
      }
  expect(plans).toBe(40);
  return `${lines.join('\n')}\n`;
}

test('forty seasons end, and stand on the way, as they did', async () => {
  await expect(told()).toMatchFileSnapshot('./seasons.no-regression.txt');
});
