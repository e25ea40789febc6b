import {
  dayNumber,
  groundUnsaid,
  type JobMark,
  jobsOf,
  type Kept,
  type OnionType,
  openSite,
  planDefaults,
  runPlan,
  type StartMethod,
  startedOn,
  storeClimateOf,
} from '@neckfall/engine';
import { climateOf } from '../../../../test/season/places.ts';
import type { CropJobs } from '../../src/index.ts';

type Asked = { id: string; name: string; at: readonly [number, number]; type: OnionType; start: StartMethod };

/** Crops whose work goes over New Year on both sides of the equator, under names that a calendar has to spell out. */
const asked = [
  {
    id: 'p1',
    name: 'Größe, süß; der „lange“ Streifen am Schuppen hinter dem Haus von Bram Okoro, gleich beim Kompost',
    at: [52.08, -3.13],
    type: 'northern-long',
    start: 'raised-seedlings',
  },
  {
    id: 'p2',
    name: 'Back\\slash\nand a second line: 玉ねぎ 🧅',
    at: [-34.9, 138.6],
    type: 'intermediate',
    start: 'direct-seed',
  },
] as const satisfies readonly Asked[];

export function crops(today: number, marks: readonly JobMark[] = []): CropJobs[] {
  return asked.map(({ id, name, at, type, start }) => {
    const site = openSite({ climate: climateOf(at[0], at[1]), years: 10, seed: 1 });
    const plan = startedOn(
      { ...planDefaults, type, start },
      dayNumber(2027, start === 'direct-seed' ? 6 : 2, 10),
    );
    const summary = runPlan(site, plan);
    const crop = { site, plan, summary, ground: groundUnsaid, observations: [], today, liftedOn: null };
    const kept: Kept = { keepsMonths: [5, 7], store: storeClimateOf(site.climate, 'cellar') };
    return { id, name, summary, jobs: jobsOf({ crop, kept, water: null, feed: null, lift: null, marks }) };
  });
}
