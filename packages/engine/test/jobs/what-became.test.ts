import { expect, test } from 'vitest';
import { climateOf } from '../../../../test/season/places.ts';
import {
  dayNumber,
  formatDay,
  groundUnsaid,
  type Job,
  type JobMark,
  jobsOf,
  type Kept,
  type Observation,
  openSite,
  planDefaults,
  runPlan,
  startedOn,
  storeClimateOf,
  tendOf,
  type WaterAnswer,
} from '../../src/index.ts';

const site = openSite({ climate: climateOf(52.08, -3.13), years: 10, seed: 1 });
const start = dayNumber(2027, 3, 20);
const plan = startedOn({ ...planDefaults, type: 'northern-long', start: 'sets' }, start);
const summary = runPlan(site, plan);
const kept: Kept = { keepsMonths: [5, 7], store: storeClimateOf(site.climate, 'cellar') };

type Said = {
  marks?: JobMark[];
  observations?: Observation[];
  liftedOn?: number;
  water?: WaterAnswer | null;
};

function jobsOn(today: number, { marks = [], observations = [], liftedOn, water }: Said = {}): Job[] {
  const crop = { site, plan, summary, ground: groundUnsaid, observations, today, liftedOn: liftedOn ?? null };
  const tended = tendOf(crop, kept);
  return jobsOf({ ...tended, ...(water !== undefined && { water }), marks });
}

const of = (jobs: readonly Job[], id: string) => {
  const job = jobs.find((one) => one.id === id);
  if (!job) throw new Error(`no job ${id} among ${jobs.map((one) => one.id)}`);
  return job;
};
const mark = (job: string, state: JobMark['state'], day: number, until?: number): JobMark => ({
  id: `${job} ${day}`,
  plantingId: 'p',
  job,
  state,
  date: formatDay(day),
  ...(until !== undefined && { until: formatDay(until) }),
});
const seen = (day: number, what: Partial<Observation>): Observation => ({
  id: `o${day}`,
  plantingId: 'p',
  date: formatDay(day),
  ...what,
});

const spring = dayNumber(2027, 4, 20);

test('of what was said of a job the last holds, up to the day asked about', () => {
  const marks = [
    mark('weed', 'done', spring - 3),
    mark('weed', 'left-out', spring),
    mark('weed', 'done', spring + 1),
  ];
  expect(of(jobsOn(spring - 3, { marks }), 'weed').state).toBe('done');
  expect(of(jobsOn(spring, { marks }), 'weed').state).toBe('left-out');
  expect(of(jobsOn(spring + 1, { marks }), 'weed').state).toBe('done');
  expect(of(jobsOn(spring - 4, { marks }), 'weed').state).toBe('now');
});

test('marks of work that the crop has not are passed over', () => {
  expect(jobsOn(spring, { marks: [mark('polish', 'done', spring)] })).toEqual(jobsOn(spring));
});

test('a job put off begins that day, lasts as long, and none before its crop', () => {
  const usual = of(jobsOn(spring), 'weed');
  const put = of(jobsOn(spring, { marks: [mark('weed', 'put-off', spring, spring + 9)] }), 'weed');
  expect(put.from).toBe(spring + 9);
  expect([put.best - put.from, put.to - put.from]).toEqual([usual.best - usual.from, usual.to - usual.from]);
  expect(put.state).toBe('coming');
  const early = of(jobsOn(spring, { marks: [mark('weed', 'put-off', spring, start - 40)] }), 'weed');
  expect(early.from).toBe(start);
});

test('what follows lifting follows it where it is put off', () => {
  const usual = jobsOn(spring);
  const by = 5;
  const marks = [mark('lift', 'put-off', spring, of(usual, 'lift').from + by)];
  const later = jobsOn(spring, { marks });
  for (const id of ['lift', 'dry', 'clean', 'store'])
    expect(of(later, id).best, id).toBe(of(usual, id).best + by);
  // how long they last hangs on the day a little
  const shift = of(later, 'check-store').best - of(usual, 'check-store').best;
  expect(Math.abs(shift - by)).toBeLessThanOrEqual(1);
});

test('once lifted, work in the bed is over and the rest counts from that day', () => {
  const liftedOn = dayNumber(2027, 7, 20);
  const today = liftedOn + 3;
  for (const said of [{ liftedOn }, { marks: [mark('lift', 'done', liftedOn)] }]) {
    const jobs = jobsOn(today, said);
    expect(of(jobs, 'lift')).toMatchObject({ state: 'done', best: liftedOn });
    expect(of(jobs, 'dry')).toMatchObject({ state: 'now', best: liftedOn + 1 });
    const inBed = ['weed', 'feed', 'water', 'watch-thrips', 'watch-onion-fly', 'check-tops', 'water-stop'];
    for (const job of jobs.filter(({ name }) => inBed.includes(name)))
      expect(['gone-by', 'done'], job.id).toContain(job.state);
  }
});

test('tops seen over say lift now, whatever the season had in mind', () => {
  const day = dayNumber(2027, 7, 10);
  const few = jobsOn(day, { observations: [seen(day, { topsOverShare: 0.5 })] });
  expect(of(few, 'lift').why.code).toBe('tops-over');
  const lift = of(jobsOn(day, { observations: [seen(day, { topsOverShare: 0.6 })] }), 'lift');
  expect(lift).toMatchObject({ state: 'now', from: day, why: { code: 'tops-seen' } });
});

test('plants that were seen were planted; bulbs counted in the store were looked at', () => {
  expect(of(jobsOn(spring), 'plant').state).toBe('gone-by');
  const jobs = jobsOn(spring, { observations: [seen(spring, { leavesGreen: 3 })] });
  expect(of(jobs, 'plant').state).toBe('done');
  expect(of(jobsOn(spring, { observations: [seen(spring, { note: 'Rain' })] }), 'plant').state).toBe(
    'gone-by',
  );
  const liftedOn = dayNumber(2027, 8, 1);
  const look = of(jobsOn(liftedOn, { liftedOn }), 'check-store-2').best;
  const looked = jobsOn(look + 2, { liftedOn, observations: [seen(look + 2, { soundCount: 80 })] });
  expect(of(looked, 'store').state).toBe('done');
  expect(of(looked, 'check-store-2').state).toBe('done');
  expect(of(looked, 'check-store-3').state).toBe('coming');
});

test('thick necks counted bring the looks at the store forward', () => {
  const liftedOn = dayNumber(2027, 8, 1);
  const last = (thickNeckCount: number) =>
    of(
      jobsOn(liftedOn + 5, { liftedOn, observations: [seen(liftedOn, { bulbCount: 60, thickNeckCount })] }),
      'check-store-3',
    ).best;
  expect(last(30)).toBeLessThan(last(2));
});

const dry: WaterAnswer['today'] = {
  depletionMm: 20,
  readilyAvailableMm: 12,
  waterNow: true,
  litresPerM2: 20,
  litresForBed: null,
  minutes: null,
};

test('watering comes round again: done today, asked for anew when the bed is dry again', () => {
  const { water } = tendOf(
    { site, plan, summary, ground: groundUnsaid, observations: [], today: spring, liftedOn: null },
    kept,
  );
  const thirsty = water && { ...water, today: dry };
  const marks = [mark('water', 'done', spring)];
  expect(of(jobsOn(spring, { water: thirsty, marks }), 'water').state).toBe('done');
  expect(of(jobsOn(spring + 1, { water: thirsty, marks }), 'water').state).toBe('now');
});

test('watering put off stays so until its day', () => {
  const { water } = tendOf(
    { site, plan, summary, ground: groundUnsaid, observations: [], today: spring, liftedOn: null },
    kept,
  );
  const thirsty = water && { ...water, today: dry };
  const marks = [mark('water', 'put-off', spring, spring + 3)];
  for (const after of [0, 1, 2])
    expect(of(jobsOn(spring + after, { water: thirsty, marks }), 'water'), `${after}`).toMatchObject({
      state: 'coming',
      from: spring + 3,
    });
  expect(of(jobsOn(spring + 3, { water: thirsty, marks }), 'water')).toMatchObject({
    state: 'now',
    from: spring + 3,
  });
  expect(of(jobsOn(spring + 4, { water: thirsty, marks }), 'water').state).toBe('now');
});
