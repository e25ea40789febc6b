import { jobSources as titles } from '@neckfall/data';
import {
  dayNumber,
  formatDay,
  groundUnsaid,
  type Job,
  jobCautions,
  jobNames,
  jobSources,
  jobsOf,
  type MonthlyClimate,
  type Observation,
  openSite,
  planDefaults,
  runPlan,
  type SeasonSummary,
  startedOn,
  startMethods,
  storeClimateOf,
  tendOf,
  type WaterToday,
} from '@neckfall/engine';
import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { expect, test } from 'vitest';
import { climateOf, uniformClimate } from '../../../../test/season/places.ts';
import { cautionSentence, jobName, jobSentence, jobSourceName, openSentence } from '../../src/index.ts';

await loadLater();
await loadLanguage('es');
const english = speaker('metric');
const american = speaker('us');
const speakers = [english, american, speaker('metric', 'es')];

/** From the Arctic to beyond the equator, where crops end in every way they can. */
const places = [
  [52.08, -3.13],
  [69.6, 18.9],
  [46.9, -96.8],
  [-34.9, 138.6],
  [31.4, 74.3],
  [-0.2, -78.5],
] as const;
const dry: WaterToday = {
  depletionMm: 20,
  readilyAvailableMm: 12,
  waterNow: true,
  litresPerM2: 22,
  litresForBed: 176,
  minutes: 25,
};

/** Leaves alone ask for feed on such ground too. */
const poor = { ...groundUnsaid, fertility: 'poor' } as const;

const types = ['tropical-short', 'intermediate', 'northern-long'] as const;

type Told = { job: Job; summary: SeasonSummary };

function toldIn(climate: MonthlyClimate): Told[] {
  const site = openSite({ climate, years: 3, seed: 1 });
  return types.flatMap((type) =>
    startMethods.flatMap((start) =>
      [2, 6].flatMap((month) => {
        const plan = startedOn({ ...planDefaults, type, start }, dayNumber(2027, month, 10));
        const summary = runPlan(site, plan);
        const today = plan.startDay + 60;
        const crop = { site, plan, summary, ground: poor, observations: [], today, liftedOn: null };
        const tended = tendOf(crop, { keepsMonths: [5, 7], store: storeClimateOf(climate, 'cellar') });
        const overs: Observation = { id: 'o', plantingId: 'p', date: formatDay(today), topsOverShare: 0.7 };
        return [
          jobsOf({ ...tended, marks: [] }),
          jobsOf({ ...tended, marks: [], water: tended.water && { ...tended.water, today: dry } }),
          jobsOf({ ...tended, crop: { ...crop, observations: [overs] }, marks: [] }),
          jobsOf({ ...tended, crop: { ...crop, liftedOn: today - 1 }, marks: [] }),
        ].flatMap((jobs) => jobs.map((job) => ({ job, summary })));
      }),
    ),
  );
}

// no seed comes up in eternal frost
const climates = [...places.map(([lat, lon]) => climateOf(lat, lon)), uniformClimate(-20, 10)];
const told = climates.flatMap(toldIn);

test('every job of crops all over the world is said, in one sentence without a gap', () => {
  const codes = new Map<string, string>();
  for (const { job, summary } of told)
    for (const voice of speakers) {
      const said = openSentence(job, summary, voice);
      codes.set(job.why.code, said);
      for (const sentence of [said, jobSentence(job, summary, voice), jobName(job, voice)])
        expect(/[{}]|undefined|NaN|null|\bInfinity/.test(sentence), sentence).toBe(false);
      expect(said.slice(0, -1), said).not.toMatch(/\.\s[A-ZÁÉÍÓÚ]/);
      expect(said.endsWith('.'), said).toBe(true);
    }
  expect(new Set(told.map(({ job }) => job.name))).toEqual(new Set(jobNames));
  expect([...codes.keys()].toSorted()).toEqual([
    'check-store',
    'check-tops',
    'clean',
    'dry',
    'dry-unripe',
    'feed',
    'feed-ground',
    'feed-ground-leaves',
    'feed-leaves',
    'feed-stop',
    'harden',
    'lift-unripe',
    'lifted',
    'mildew',
    'onion-fly',
    'plant',
    'plant-leaves',
    'plant-ready',
    'prick-out',
    'pull-green',
    'seedcorn-fly',
    'sow',
    'sow-leaves',
    'sow-never-up',
    'store',
    'thin',
    'thrips',
    'tops-over',
    'tops-seen',
    'trim',
    'water-next',
    'water-now',
    'water-stop',
    'weed',
    'weed-leaves',
  ]);
});

test('each kind says its numbers', () => {
  const { summary } = told[0];
  const why = {
    code: 'feed',
    values: { gramsPerM2: 30, nGPerM2: 3, product: '10-10-10', leaves: 4, onsetDay: dayNumber(2027, 6, 12) },
  };
  const day = dayNumber(2027, 5, 20);
  const job = {
    id: 'feed-2',
    name: 'feed',
    from: day,
    best: day + 4,
    to: day + 9,
    state: 'now',
    why,
    source: 'california-nitrogen',
    cautions: [],
  } as const satisfies Job;
  const spaced = (text: string) => text.replace(/\s/g, ' ');
  expect(spaced(jobSentence(job, summary, english))).toBe(
    'Feed 30 g/m² of 10-10-10 now (20 – 29 May): 4 leaves stand then and bulbs start about 12 June; nitrogen after that makes thick necks.',
  );
  expect(spaced(jobSentence(job, summary, american))).toContain('of 10-10-10 now (May 20 – 29)');
  expect(jobName(job, english)).toBe('Feed (2)');
  expect(jobSentence({ ...job, state: 'done' }, summary, english)).toBe('Feed (2): done.');
  expect(jobSentence({ ...job, state: 'left-out' }, summary, english)).toBe('Feed (2): left out.');
  expect(spaced(jobSentence({ ...job, state: 'gone-by' }, summary, english))).toBe(
    'Feed (2): due about 24 May (20 – 29 May), gone by.',
  );
});

test('every caution and every source can be told', () => {
  for (const voice of speakers) {
    for (const caution of jobCautions) expect(cautionSentence(caution, voice)).toMatch(/\.$/);
    for (const source of jobSources) expect(jobSourceName(source, voice).length).toBeGreaterThan(5);
  }
  const unread = ['common-practice', 'memory'];
  expect(Object.keys(titles).toSorted()).toEqual(
    jobSources.filter((one) => !unread.includes(one)).toSorted(),
  );
});
