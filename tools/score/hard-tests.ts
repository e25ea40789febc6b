import {
  dayNumber,
  defaultPlantValues,
  judge,
  type OnionType,
  type PlantValues,
  planDefaults,
  referenceBulbG,
  runnerOf,
  stage,
} from '../../packages/engine/src/index.ts';
import { nominalYear } from './calendar-rows.ts';
import { growthRoom } from './growth-rooms.ts';
import { scoreSite } from './sites.ts';

export type HardTest = { name: string; source: string; holds: boolean; found: string };

// Low places by latitude, chosen by design: dry and wet, both hemispheres, every continent with land there.
export const below15: readonly Spot[] = [
  [13.5, 2.1],
  [12.1, -86.3],
  [13.75, 100.5],
  [14.7, -17.4],
  [13.1, 80.2],
  [10.3, -66.9],
  [-6.8, -79.85],
  [-12.4, 130.9],
];
export const below25: readonly Spot[] = [
  [23.1, -82.4],
  [23.8, 90.4],
  [21, 105.8],
  [19.1, 72.8],
  [24.1, 32.9],
  [22.3, 114.2],
  [21.3, -157.9],
  [-23, -43.3],
];
const below20: readonly Spot[] = [
  [19.1, 72.8],
  [14.7, -17.4],
  [10.3, -66.9],
  [-12.4, 130.9],
  [1.35, 103.82],
];
/** A low place, degrees. */
export type Spot = readonly [latitude: number, longitude: number];

const longTypes: readonly OnionType[] = ['early-long', 'northern-long'];

/** The hard tests of the model: what must hold whatever a fit says. */
export function hardTests(values: PlantValues = defaultPlantValues): HardTest[] {
  const warm = 31.5;
  const twelve = growthRoom({ type: 'tropical-short', lampHours: 12, tempC: warm }, values);
  const eleven = growthRoom({ type: 'tropical-short', lampHours: 11, tempC: warm }, values);
  const shaded = growthRoom({ type: 'tropical-short', lampHours: 12, tempC: warm, shadeShare: 0.5 }, values);
  const half = growthRoom({ type: 'tropical-short', lampHours: 11.5, tempC: 25 }, values);
  const northern = growthRoom({ type: 'northern-long', lampHours: 14, tempC: 20 }, values);
  const long16 = growthRoom({ type: 'northern-long', lampHours: 16, tempC: 20 }, values);
  const wickramasinghe = 'Wickramasinghe et al. 2000';
  const say = (days: number | null) => (days === null ? 'no bulb' : `${days} days`);
  const onsets = onsetCount(below20, longTypes, values);
  const good25 = goodCount(below25, longTypes, values);
  const good15 = goodCount(below15, ['intermediate'], values);
  return [
    test('tropical reds: none at 11 h', wickramasinghe, eleven.onsetDays === null, say(eleven.onsetDays)),
    test(
      'tropical reds: bulbs at 12 h within 2 weeks',
      wickramasinghe,
      (twelve.onsetDays ?? 99) <= 14,
      say(twelve.onsetDays),
    ),
    test(
      'tropical reds: ripe at 12 h and 29–34 °C within 6 weeks',
      wickramasinghe,
      (twelve.ripeDays ?? 99) <= 42,
      say(twelve.ripeDays),
    ),
    test(
      'tropical reds: none at 12 h under 50 % shade',
      wickramasinghe,
      shaded.onsetDays === null,
      say(shaded.onsetDays),
    ),
    test('tropical reds: none at 11.5 h', 'Tesfay et al. 2011', half.onsetDays === null, say(half.onsetDays)),
    test(
      'northern types: none at 14 h, bulbs at 16 h',
      'Austin 1972',
      northern.onsetDays === null && long16.onsetDays !== null,
      `${say(northern.onsetDays)}, ${say(long16.onsetDays)}`,
    ),
    test(
      'long-day types: no onset in the mean season below 20°',
      'common practice, no source',
      onsets === 0,
      `${onsets} of the starts tried`,
    ),
    test(
      'long-day types: no good crop below 25°',
      'common practice, no source',
      good25 === 0,
      `${good25} of the starts tried`,
    ),
    test(
      'intermediate types: no good crop below 15°',
      'common practice, no source',
      good15 === 0,
      `${good15} of the starts tried`,
    ),
  ];
}

function test(name: string, source: string, holds: boolean, found: string): HardTest {
  return { name, source, holds, found };
}

function goodCount(spots: readonly Spot[], types: readonly OnionType[], values: PlantValues): number {
  return count(
    spots,
    types,
    values,
    (site, outcome, plan) =>
      judge(outcome, plan, values.types[plan.type].dryMatterShare, referenceBulbG(site, plan)) === 'good',
  );
}

function onsetCount(spots: readonly Spot[], types: readonly OnionType[], values: PlantValues): number {
  return count(spots, types, values, (_, outcome) => outcome.reached >= stage.onset);
}

type Visit = (
  site: ReturnType<typeof scoreSite>,
  outcome: ReturnType<ReturnType<typeof runnerOf>['meanSeason']>,
  plan: Parameters<typeof referenceBulbG>[1],
) => boolean;

function count(spots: readonly Spot[], types: readonly OnionType[], values: PlantValues, hit: Visit): number {
  let hits = 0;
  for (const [latitudeDeg, longitudeDeg] of spots) {
    const site = scoreSite({ latitudeDeg, longitudeDeg, elevationM: null }, values);
    for (const type of types) {
      for (const start of ['direct-seed', 'raised-seedlings'] as const) {
        const plan = { ...planDefaults, type, start, startDay: dayNumber(nominalYear, 1, 1) };
        const runner = runnerOf(site, plan);
        for (let month = 1; month <= 12; month++) {
          runner.moveTo(dayNumber(nominalYear, month, 1), null);
          if (hit(site, runner.meanSeason(), plan)) hits++;
        }
      }
    }
  }
  return hits;
}
