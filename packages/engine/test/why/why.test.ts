import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plans, points } from '../../../../test/season/any-plan.ts';
import { climateOf } from '../../../../test/season/places.ts';
import {
  causeKinds,
  dayNumber,
  openSite,
  type Plan,
  type PlanForm,
  passedOver,
  planDefaults,
  questionAnswers,
  type Site,
  type Symptom,
  startedOn,
  startMethods,
  storeClimateOf,
  symptoms,
  type WhyAnswer,
  type WhyAsked,
  whyOf,
} from '../../src/index.ts';

const today = dayNumber(2028, 1, 10);

function asked(
  site: Site,
  plan: Plan,
  seen: readonly Symptom[],
  otherwise: Partial<WhyAsked> = {},
): WhyAsked {
  return {
    plan,
    said: new Set<keyof PlanForm>(['type', 'start', 'startDay']),
    isAbout: false,
    today,
    symptoms: seen,
    noticed: null,
    store: storeClimateOf(site.climate, 'shed'),
    isStoreSaid: false,
    keepsMonths: [3, 4],
    answers: {},
    ...otherwise,
  };
}

function expectWhole({ causes, unseen, ask, nextYear }: WhyAnswer): void {
  const sum = causes.reduce((total, { probability }) => total + probability, unseen);
  expect(sum).toBeCloseTo(1, 9);
  expect(causes.length).toBeGreaterThan(0);
  expect(causes.map(({ probability }) => probability)).toEqual(
    causes.map(({ probability }) => probability).sort((a, b) => b - a),
  );
  for (const { probability, for: speaksFor, against, whatIf, cause } of causes) {
    expect(probability).toBeGreaterThan(0);
    for (const evidence of [...speaksFor, ...against])
      for (const value of Object.values(evidence))
        if (typeof value === 'number') expect(value).toSatisfy(Number.isFinite);
    if (causeKinds[cause] === 'seen') expect(whatIf).toBeNull();
  }
  if (ask) expect(questionAnswers[ask].length).toBeGreaterThan(1);
  expect(nextYear.plan.startDay).toBeGreaterThan(today);
}

describe('an answer', () => {
  test('is whole for anything seen of any crop anywhere', () => {
    const seen = fc.uniqueArray(fc.constantFrom(...symptoms), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(points, plans, seen, fc.boolean(), ([lat, lon], form, of, isAbout) => {
        const site = openSite({ climate: climateOf(lat, lon), years: 4, seed: 1 });
        const plan = form as Plan;
        expectWhole(whyOf(site, asked(site, plan, of, { isAbout })));
      }),
      { numRuns: 25, seed: 16 },
    );
  });

  test.each(symptoms)('%s has a cause that can be told, however the crop was started', (symptom) => {
    const site = openSite({ climate: climateOf(53.8, -1.55), years: 4, seed: 1 });
    for (const start of startMethods) {
      const plan = startedOn({ ...planDefaults, type: 'northern-long', start }, dayNumber(2027, 4, 1));
      expectWhole(whyOf(site, asked(site, plan, [symptom])));
    }
  });

  test('needs a symptom', () => {
    const site = openSite({ climate: climateOf(53.8, -1.55), years: 2, seed: 1 });
    const plan = startedOn({ ...planDefaults, type: 'short', start: 'sets' }, dayNumber(2027, 4, 1));
    expect(() => whyOf(site, asked(site, plan, []))).toThrow(/symptoms/);
  });
});

const leeds = openSite({ climate: climateOf(53.8, -1.55), years: 12, seed: 1 });
const sets = (setSizeMm: number) =>
  startedOn({ ...planDefaults, type: 'northern-long', start: 'sets', setSizeMm }, dayNumber(2027, 3, 25));
const probabilityOf = (answer: WhyAnswer, cause: string) =>
  answer.causes.find((of) => of.cause === cause)?.probability ?? 0;

describe('what the grower says is a fact', () => {
  const said = new Set<keyof PlanForm>(['type', 'start', 'startDay', 'setSizeMm']);

  test('sets said to be large flowered because they were large, small ones did not', () => {
    const large = whyOf(leeds, asked(leeds, sets(26), ['flowered'], { said }));
    expect(large.causes[0].cause).toBe('large-sets');
    expect(large.causes[0].whatIf?.change).toEqual({ code: 'smaller-sets', mm: 14 });
    const small = whyOf(leeds, asked(leeds, sets(12), ['flowered'], { said }));
    expect(probabilityOf(small, 'large-sets')).toBe(0);
  });

  test('an answer about the size of sets is laid into the plan', () => {
    const answers = { 'set-size': 'walnut' } as const;
    const answered = whyOf(leeds, asked(leeds, sets(16), ['flowered'], { answers }));
    const saidSo = whyOf(leeds, asked(leeds, sets(26), ['flowered'], { said }));
    expect(answered.asGrown.boltedShare).toBe(saidSo.asGrown.boltedShare);
    expect(answered.causes[0].probability).toBe(saidSo.causes[0].probability);
    expect(answered.causes[0].whatIf).toEqual(saidSo.causes[0].whatIf);
  });

  test('a bed said to be watered is hardly thought dry', () => {
    const plan = startedOn(
      { ...planDefaults, type: 'northern-long', start: 'direct-seed' },
      dayNumber(2027, 3, 25),
    );
    const unsaid = whyOf(leeds, asked(leeds, plan, ['wilted']));
    const watered = whyOf(leeds, asked(leeds, plan, ['wilted'], { answers: { watering: 'often' } }));
    expect(probabilityOf(watered, 'thirst')).toBeLessThan(probabilityOf(unsaid, 'thirst') / 2);
  });
});

describe('questions', () => {
  test('are three at most, and none is put twice, though all be passed over', () => {
    const plan = startedOn(
      { ...planDefaults, type: 'northern-long', start: 'raised-seedlings' },
      dayNumber(2027, 2, 20),
    );

    let answers: WhyAsked['answers'] = {};
    for (let i = 0; i < 3; i++) {
      const { ask } = whyOf(leeds, asked(leeds, plan, ['soft', 'wilted'], { answers }));
      if (ask === null) break;
      expect(Object.keys(answers)).not.toContain(ask);
      answers = { ...answers, [ask]: passedOver };
    }
    expect(Object.keys(answers).length).toBeGreaterThan(0);
    const last = whyOf(leeds, asked(leeds, plan, ['soft', 'wilted'], { answers }));
    if (Object.keys(answers).length === 3) expect(last.ask).toBeNull();
  });
});

describe('rescue', () => {
  test('is as strict as the strictest thing seen', () => {
    const answer = whyOf(leeds, asked(leeds, sets(16), ['small', 'neck-rot', 'flowered']));
    expect(answer.rescue).toMatchObject({ eating: 'no', storing: 'no' });
    expect(answer.cautions).toContain('mould-throw-away');
    expect(answer.cautions).toContain('pets');
  });
});

describe('the same season without a cause', () => {
  test('an onion of long days in the tropics bulbs as another kind', () => {
    const site = openSite({ climate: climateOf(1.35, 103.82), years: 12, seed: 1 });
    const plan = startedOn({ ...planDefaults, type: 'northern-long', start: 'sets' }, dayNumber(2027, 3, 1));
    const { causes, nextYear, asGrown } = whyOf(site, asked(site, plan, ['no-bulb']));
    expect(causes[0].cause).toBe('days-too-short');
    expect(causes[0].probability).toBeGreaterThan(0.9);
    expect(causes[0].whatIf?.change).toMatchObject({ code: 'other-kind' });
    expect(asGrown.bulbDiameterMm).toBeNull();
    expect(nextYear.grown.bulbDiameterMm).not.toBeNull();
    expect(causes[0].for).toContainEqual(expect.objectContaining({ code: 'longest-day' }));
  });
});

describe('where nobody said which onion it was, or when it was started', () => {
  const plan = startedOn(
    { ...planDefaults, type: 'intermediate', start: 'raised-seedlings' },
    dayNumber(2026, 12, 1),
  );
  const site = openSite({ climate: climateOf(32.8, -96.8), years: 12, seed: 1 });
  const { causes } = whyOf(site, asked(site, plan, ['no-bulb'], { said: new Set(['start']) }));
  test('the need told is that of the later kind which it may have been', () => {
    const ownNeed = site.values.types.intermediate.criticalPhotoperiodH;
    const late = causes.find(({ cause }) => cause === 'type-too-late' || cause === 'days-too-short');
    const needed = late?.for.find((of) => of.code === 'needed-day-comes' || of.code === 'longest-day');
    expect(needed).toBeDefined();
    expect(needed && 'neededH' in needed && needed.neededH).toBeGreaterThan(ownNeed);
  });

  test('a late start is told by the season started late, not by one in which it makes no difference', () => {
    const spring = startedOn(
      { ...planDefaults, type: 'northern-long', start: 'sets' },
      dayNumber(2027, 4, 23),
    );
    const answer = whyOf(leeds, asked(leeds, spring, ['no-bulb'], { said: new Set(['type', 'start']) }));
    const late = answer.causes.find(({ cause }) => cause === 'started-too-late');
    expect(late?.for).toContainEqual(expect.objectContaining({ code: 'run-only-if' }));
    expect(late?.against).not.toContainEqual(expect.objectContaining({ code: 'run-no-matter' }));
  });
});
