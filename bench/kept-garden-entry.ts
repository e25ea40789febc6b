import type { Garden } from '@neckfall/engine';
import { openDeviceGarden } from '../packages/app/src/device/device-garden.ts';
import type { Step } from '../packages/app/src/device/garden-steps.ts';
import { greatGarden, makeGreatGarden } from './great-garden.ts';

export type SaveTimes = Record<'seen' | 'work' | 'weather' | 'planting' | 'back', number[]>;

let told: { garden: Garden | null } = { garden: null };
const open = () => openDeviceGarden((now) => (told = now));

async function timed(work: () => Promise<unknown>): Promise<number> {
  const from = performance.now();
  await work();
  return performance.now() - from;
}

/** What the page of the benchmark is asked for. */
const asked = {
  fill: async () => {
    const held = await open();
    return timed(() => held.change({ code: 'opened', name: 'great' }, () => makeGreatGarden(greatGarden)));
  },
  open: async () => {
    const took = await timed(open);
    if (told.garden?.observations.length !== greatGarden.observations) throw new Error('not all was read');
    return took;
  },
  save: async (times: number): Promise<SaveTimes> => {
    const held = await open();
    const took: SaveTimes = { seen: [], work: [], weather: [], planting: [], back: [] };
    const change = (code: Step['code'], make: (now: Garden) => Garden) =>
      timed(() => held.change({ code, name: 'Bed' }, (now) => make(now as Garden)));
    for (let run = 0; run < times; run++) {
      const seen = {
        id: `new-${run}`,
        plantingId: `planting-${run * 7}`,
        date: '2027-05-20',
        leavesGreen: 5,
      };
      took.seen.push(await change('seen', (now) => ({ ...now, observations: [...now.observations, seen] })));
      const mark = {
        id: `done-${run}`,
        plantingId: `planting-${run * 7}`,
        job: 'lift',
        state: 'done',
        date: '2027-08-20',
      } as const;
      took.work.push(await change('work', (now) => ({ ...now, jobs: [...now.jobs, mark] })));
      took.weather.push(
        await change('weather-kept', (now) => ({
          ...now,
          weather: now.weather.map((one, at) =>
            at === run % now.weather.length ? { ...one, rainMm: one.rainMm.with(-1, run) } : one,
          ),
        })),
      );
      took.planting.push(
        await change('changed', (now) => ({
          ...now,
          plantings: now.plantings.map((one, at) => (at === run ? { ...one, plants: 90 + run } : one)),
        })),
      );
    }
    for (let run = 0; run < times; run++) took.back.push(await timed(held.back));
    // as it was found
    for (let run = 0; run < 3 * times; run++) await held.back();
    return took;
  },
};

declare global {
  var keptGarden: typeof asked;
}
globalThis.keptGarden = asked;
