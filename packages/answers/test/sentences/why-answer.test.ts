import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Change,
  type ChangeCode,
  dayNumber,
  type GrownSo,
  planDefaults,
  startedOn,
} from '../../../engine/src/index.ts';
import {
  chanceText,
  changePhrase,
  nextYearSentence,
  unseenSentence,
  whatIfSentence,
  whyLead,
} from '../../src/index.ts';

await loadLater();
await loadLanguage('es');
const [british, american, spanish] = [speaker('metric'), speaker('us'), speaker('metric', 'es')];
const day = dayNumber(2027, 3, 12);

const plan = startedOn({ ...planDefaults, type: 'northern-long', start: 'direct-seed' }, day);
const spread = (p50: number) => ({ p10: p50 - 10, p50, p90: p50 + 10 });
const poor: GrownSo = {
  plan,
  outcome: 'small',
  goodShare: 0.1,
  bulbDiameterMm: spread(32),
  leavesAtOnset: 6,
  boltedShare: 0.01,
  onset: day + 90,
  neckFall: day + 150,
  soundShare: null,
};
const good: GrownSo = { ...poor, outcome: 'good', goodShare: 0.8, bulbDiameterMm: spread(61) };

const changes: { [Code in ChangeCode]: Extract<Change, { code: Code }> } = {
  'other-kind': { code: 'other-kind', type: 'intermediate' },
  'other-start': { code: 'other-start', type: 'short', start: 'sets', day },
  earlier: { code: 'earlier', days: 21, day },
  later: { code: 'later', days: 10, day },
  'smaller-sets': { code: 'smaller-sets', mm: 14 },
  'warm-stored-sets': { code: 'warm-stored-sets' },
  watered: { code: 'watered' },
  wider: { code: 'wider', perM2: 40 },
  'in-sun': { code: 'in-sun' },
  covered: { code: 'covered', cover: 'fleece' },
  'fresh-packet': { code: 'fresh-packet' },
  'usual-kind': { code: 'usual-kind' },
  'usual-day': { code: 'usual-day' },
  'cool-store': { code: 'cool-store', tempC: 2 },
  'dry-store': { code: 'dry-store', humidityPct: 65 },
  'frost-free-store': { code: 'frost-free-store' },
  'better-keeper': { code: 'better-keeper', months: 6 },
  'lifted-ripe': { code: 'lifted-ripe' },
  'usual-weather': { code: 'usual-weather' },
  'other-weather': { code: 'other-weather', byC: -2.5 },
};

describe('how likely', () => {
  test.each([
    [0, 'fewer than 1 in 20'],
    [0.0499, 'fewer than 1 in 20'],
    [0.05, '1 in 10'],
    [0.24, '2 in 10'],
    [0.76, '8 in 10'],
    [0.95, '9 in 10'],
    [0.951, 'more than 19 in 20'],
    [1, 'more than 19 in 20'],
  ])('%d is %s', (probability, told) => {
    expect(chanceText(probability, british)).toBe(told);
  });

  test('never falls as it rises', () => {
    const rank = (probability: number) => {
      const told = chanceText(probability, british);
      if (told.endsWith('in 20')) return told.startsWith('fewer') ? 0.5 : 9.5;
      return Number(told.split(' ')[0]);
    };
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const rises = (a: number, b: number) => rank(Math.min(a, b)) <= rank(Math.max(a, b));
    fc.assert(fc.property(share, share, rises), { seed: 3, numRuns: 200 });
  });
});

describe('the answer in one line', () => {
  const lead = (probability: number, voice = british) =>
    whyLead(
      {
        causes: [{ cause: 'started-too-late', probability, for: [], against: [], whatIf: null }],
        unseen: 1 - probability,
        usual: 0,
      },
      voice,
    );
  test('says how sure it is', () => {
    expect(lead(0.8)).toBe('You started too late. Most likely so: 8 in 10.');
    expect(lead(0.7)).toContain('Most likely');
    expect(lead(0.69)).toBe('You started too late. Likely, but not sure: 7 in 10.');
    expect(lead(0.4)).toContain('Likely');
    expect(lead(0.39)).toMatch(/^It may be one of several things\. You started too late: 4 in 10/);
    expect(lead(0.8, spanish)).toBe('Empezaste demasiado tarde. Lo más probable: 8 de cada 10.');
  });

  test('says that nothing known fits where no cause is likely enough', () => {
    const none = { causes: [], unseen: 1, usual: 0 };
    expect(whyLead(none, british)).toBe(unseenSentence(none, british));
    expect(lead(0.04)).toContain('no reckoning and no list knows');
    expect(lead(0.05)).toContain('You started too late');
  });

  test('leaves room for what nobody knows', () => {
    expect(unseenSentence({ unseen: 0.21, usual: 0.3 }, british)).toMatch(
      /no reckoning and no list knows: 2 in 10\.$/,
    );
    expect(unseenSentence({ unseen: 0, usual: 0.3 }, british)).toContain('fewer than 1 in 20');
    expect(unseenSentence({ unseen: 0.6, usual: 0.3 }, british)).toContain(
      'in 3 seasons in 10 whatever is done',
    );
    expect(unseenSentence({ unseen: 0.6, usual: 0.02 }, british)).not.toContain('whatever is done');
  });
});

describe('the season without a cause', () => {
  test('is held against the season as grown', () => {
    const whatIf = { change: changes.earlier, atWork: poor, grown: good };
    expect(whatIfSentence(whatIf, { ...poor }, british)).toBe(
      'As grown: 32 mm across; started 3 weeks earlier, about 12 March: 61 mm across, good bulbs in 8 years in 10.',
    );
    expect(whatIfSentence(whatIf, poor, american)).toBe(
      'As grown: 1.3 in across; started 3 weeks earlier, about March 12: 2.4 in across, good bulbs in 8 years in 10.',
    );
    expect(whatIfSentence(whatIf, poor, spanish)).toMatch(
      /^Como se cultivaron: 32 mm de ancho; empezadas 3 sem/,
    );
  });

  test('is the season as told where the cause only may have been at work', () => {
    const whatIf = { change: changes.watered, atWork: poor, grown: good };
    expect(whatIfSentence(whatIf, good, british)).toMatch(
      /^If it was so: 32 mm across; watered as needed: 61 mm/,
    );
  });

  test('is told by the plants that flower where these differ', () => {
    const bolted = { ...poor, outcome: 'bolts', boltedShare: 0.62 } as const;
    const whatIf = { change: changes['smaller-sets'], atWork: bolted, grown: { ...good, boltedShare: 0.1 } };
    expect(whatIfSentence(whatIf, bolted, british)).toBe(
      'As grown: 6 plants in 10 run to flower; from sets 14 mm across: 1 plant in 10 runs to flower, good bulbs in 8 years in 10.',
    );
  });

  test('is told by bulbs still sound where the store was otherwise', () => {
    const lost = { ...good, soundShare: 0.31 };
    const whatIf = { change: changes['cool-store'], atWork: lost, grown: { ...good, soundShare: 0.82 } };
    expect(whatIfSentence(whatIf, lost, british)).toBe(
      'As kept: 3 bulbs in 10 still sound; kept at 2°C or colder: 8 bulbs in 10 still sound.',
    );
    expect(whatIfSentence(whatIf, lost, american)).toContain('36°F');
    // the same air for a crop of which no store is in question
    const unstored = { change: changes['cool-store'], atWork: poor, grown: good };
    expect(whatIfSentence(unstored, poor, british)).toContain('61 mm');
  });

  test.each([
    [{ outcome: 'no-bulb', bulbDiameterMm: null }, 'no bulbs'],
    [{ outcome: 'no-bulb' }, 'no bulbs'],
    [{ outcome: 'not-ripe' }, 'thick necks on bulbs 32 mm across'],
    [{ outcome: 'winter-killed' }, 'most lost to winter'],
  ] as const)('says what became of the crop: %o', (of, told) => {
    const grown: GrownSo = { ...poor, ...of };
    const whatIf = { change: changes.later, atWork: grown, grown: good };
    expect(whatIfSentence(whatIf, grown, british)).toContain(`As grown: ${told}; started 10 days later`);
  });
});

describe('next year', () => {
  test('says what to do otherwise and what comes of it', () => {
    expect(nextYearSentence({ plan, change: changes.earlier, grown: good }, british)).toBe(
      'Next year start 3 weeks earlier, about 12 March: 61 mm across, good bulbs in 8 years in 10.',
    );
    expect(nextYearSentence({ plan, change: changes.wider, grown: good }, american)).toContain(
      '3.7 plants per square foot',
    );
  });

  test('keeps to the plan where nothing in it was the cause, or the weather was', () => {
    const told = nextYearSentence({ plan, change: null, grown: good }, british);
    expect(told).toBe(
      'If that does not come again, the same plan next year: 61 mm across, good bulbs in 8 years in 10.',
    );
    for (const code of ['usual-weather', 'other-weather'] as const)
      expect(nextYearSentence({ plan, change: changes[code], grown: good }, british)).toBe(told);
  });

  test('says of every change its own, in every voice', () => {
    for (const voice of [british, american, spanish]) {
      const phrases = Object.values(changes).map((change) => changePhrase(change, voice));
      expect(new Set(phrases).size).toBe(phrases.length);
      for (const phrase of phrases) expect(phrase).toMatch(/^\p{Ll}.*[^.]$/u);
      const told = Object.values(changes).map((change) =>
        nextYearSentence({ plan, change, grown: good }, voice),
      );
      expect(new Set(told).size).toBe(told.length - 1);
      for (const sentence of told) expect(sentence).toMatch(/^\p{Lu}.*\.$/u);
    }
    for (const start of ['direct-seed', 'raised-seedlings', 'bought-transplants', 'sets'] as const)
      expect(changePhrase({ ...changes['other-start'], start }, british)).toContain('short-day onions');
  });

  test('names the cover, and by how much the weather would differ', () => {
    expect(changePhrase(changes.covered, british)).toBe('under fleece');
    expect(changePhrase(changes.covered, american)).toBe('under row cover');
    expect(changePhrase({ code: 'covered', cover: 'tunnel' }, british)).toBe('in a tunnel');
    expect(changePhrase(changes['other-weather'], british)).toBe('in a season 2.5°C cooler');
    expect(changePhrase({ code: 'other-weather', byC: 3 }, american)).toBe('in a season 5.4°F warmer');
  });
});
