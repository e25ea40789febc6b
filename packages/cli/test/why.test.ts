import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { causes, symptoms } from '@neckfall/engine';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import Papa from 'papaparse';
import { afterAll, describe, expect, test } from 'vitest';
import { partsOfOne } from '../src/documents/why-document.ts';
import type { WhyDocument } from '../src/documents/why-schema.ts';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-why-'));
afterAll(() => rmSync(folder, { recursive: true }));
const schema = JSON.parse(readFileSync(new URL('../schemas/why@1.json', import.meta.url), 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);

const quick = ['--today', '2026-11-20', '--years', '4'];
const why = (...args: string[]) => neckfall('why', ...args, ...quick);
const plain = (text: string) => text.replace(/\s+/g, ' ');

function documentOf(...args: string[]): WhyDocument {
  const { code, stdout, stderr } = why(...args, '--json');
  expect(code, stderr).toBe(0);
  const document = JSON.parse(stdout);
  expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
  return document;
}

const largeSets = ['Leeds', '--start', 'sets', '--date', '04-05', '--set-size', '25', '--seen', 'flowered'];
const flowered = documentOf(...largeSets);
const neverBulbed = documentOf('Singapore', '--class', 'long', '--start', 'sets', '--seen', 'never bulbed');
const rotted = documentOf('Leeds', '--seen', 'rotted-in-store', '--store', 'kitchen', '--noticed', '01');

describe.each([
  ['in flower', flowered],
  ['without bulbs', neverBulbed],
  ['rotten in store', rotted],
])('a crop %s', (_, { causes: found, unseen, rescue, cautions, ask, nextYear, today, place }) => {
  test('has causes, likeliest first, whose probabilities and what nobody can know make 1', () => {
    const probabilities = found.map(({ probability }) => probability);
    expect(probabilities).toEqual(probabilities.toSorted((a, b) => b - a));
    expect(probabilities.reduce((sum, one) => sum + one, unseen)).toBeCloseTo(1, 9);
    for (const { cause, name, advice } of found) {
      expect(causes).toContain(cause);
      expect([name, advice].every((sentence) => sentence.length > 3)).toBe(true);
    }
  });

  test('has what speaks for and against each in a sentence, with its numbers beside it', () => {
    for (const { evidence, whatIf, ...told } of found) {
      expect(told.for).toHaveLength(evidence.for.length);
      expect(told.against).toHaveLength(evidence.against.length);
      expect(told.for.length + told.against.length).toBeGreaterThan(0);
      if (whatIf) expect(whatIf.change).toBe(whatIf.changed.code);
    }
  });

  test('is rescued, warned of and planned anew', () => {
    expect(rescue.length).toBeGreaterThan(1);
    expect(cautions.length).toBeGreaterThan(0);
    expect(nextYear?.plan.date && nextYear.plan.date > today).toBe(true);
    expect(ask === null || ask.answers.length === ask.labels.length).toBe(true);
    expect(place.name).not.toBeNull();
  });
});

test('large sets are found, and smaller ones tried in their stead', () => {
  const [{ cause, probability, whatIf }] = flowered.causes;
  expect(cause).toBe('large-sets');
  expect(probability).toBeGreaterThan(0.5);
  expect(whatIf?.change).toBe('smaller-sets');
  expect(whatIf?.boltedPlantsShare).toBeLessThan(flowered.asGrown.boltedPlantsShare);
  expect(flowered.said).toEqual(expect.arrayContaining(['setSizeMm', 'start', 'date']));
  expect(flowered.said).not.toContain('water');
});

test('long-day onions wait in vain at the equator', () => {
  expect(neverBulbed.causes[0]).toMatchObject({ cause: 'days-too-short' });
  expect(neverBulbed.asGrown.bulbDiameterMm.p50).toBeNull();
  expect(neverBulbed.nextYear?.plan.class).toBe('short');
});

describe('the season meant', () => {
  const dateOf = (...args: string[]) => documentOf('Leeds', '--start', 'sets', ...args).plan.date;

  test('is the last that came so far as what was seen', () => {
    expect(dateOf('--date', '04-05', '--seen', 'small')).toBe('2026-04-05');
    expect(dateOf('--date', '11-05', '--seen', 'small')).toBe('2025-11-05');
    expect(dateOf('--date', '04-05', '--seen', 'sprouted', '--noticed', '02')).toBe('2025-04-05');
  });

  test('is that of the year or the day that is said', () => {
    expect(dateOf('--date', '04-05', '--year', '2024', '--seen', 'small')).toBe('2024-04-05');
    expect(dateOf('--date', '2023-04-05', '--seen', 'small')).toBe('2023-04-05');
    expect(dateOf('--date', '02-29', '--year', '2023', '--seen', 'small')).toBe('2023-02-28');
  });

  test('is seen in store in the winter after its start', () => {
    const noticed = (...args: string[]) =>
      documentOf('Leeds', '--start', 'sets', '--seen', 'sprouted', ...args).noticed;
    expect(noticed('--date', '2025-04-05', '--noticed', '02')).toBe('2026-02-15');
    expect(noticed('--noticed', '2026-11')).toBe('2026-11-15');
    expect(noticed('--noticed', '2026-03-01')).toBe('2026-03-01');
    expect(noticed()).toBeNull();
  });
});

describe('what was not said', () => {
  test('is as usual at the place, and told so', () => {
    const { plan, said, assumed } = documentOf('Leeds', '--seen', 'small');
    expect(plan.class).toBe('long');
    expect(said).toEqual([]);
    for (const words of ['Which onion was not said', 'How it was started', 'The day was not said'])
      expect(assumed.some((sentence) => sentence.startsWith(words))).toBe(true);
  });

  test('of an onion from elsewhere is its day: it was started as the place’s own are', () => {
    const own = documentOf('Leeds', '--start', 'sets', '--seen', 'small').plan;
    const strange = documentOf('Leeds', '--start', 'sets', '--class', 'short', '--seen', 'small').plan;
    expect(strange.class).toBe('short');
    expect(strange.date).toBe(own.date);
  });

  test('is told by options that belong to one start alone', () => {
    expect(documentOf('Leeds', '--set-size', '25', '--seen', 'flowered').plan.start).toBe('sets');
  });

  test('of seedlings is that they came from seed', () => {
    expect(['direct-seed', 'raised-seedlings']).toContain(
      documentOf('Leeds', '--seen', 'seedlings-toppled').plan.start,
    );
  });

  test('of a crop that died in winter is started before it', () => {
    const { date, start } = documentOf('Leeds', '--seen', 'died-in-winter').plan;
    expect(['08', '09', '10', '11', '12']).toContain(date.slice(5, 7));
    expect(start).not.toBe('raised-seedlings');
  });
});

test('the words that people use, in their language too, and several at once', () => {
  expect(documentOf('Leeds', '--seen', 'bolted, Golf balls', '--seen', 'small').seen).toEqual([
    'flowered',
    'small',
  ]);
  expect(documentOf('Leeds', '--seen', 'espigadas', '--lang', 'es').seen).toEqual(['flowered']);
});

test('an answer to a question changes what is likely, and is not asked again', () => {
  const sets = ['Leeds', '--start', 'sets', '--date', '04-05', '--seen', 'flowered'];
  const { ask } = documentOf(...sets);
  expect(ask?.question).toBe('set-size');
  const large = documentOf(...sets, '--said', 'set-size=walnut');
  const small = documentOf(...sets, '--said', 'set-size=pea');
  const share = ({ causes: found }: WhyDocument) =>
    found.find(({ cause }) => cause === 'large-sets')?.probability ?? 0;
  expect(share(large)).toBeGreaterThan(share(small));
  expect(large.answers).toEqual([{ question: 'set-size', answer: 'walnut' }]);
  expect(large.ask?.question).not.toBe('set-size');
  expect(documentOf(...sets, '--said', 'set-size=not-sure').ask?.question).not.toBe('set-size');
});

test('dates as remembered spread what came', () => {
  const exact = documentOf(...largeSets).asGrown.bulbDiameterMm;
  const about = documentOf(...largeSets, '--about').asGrown.bulbDiameterMm;
  expect(about).not.toEqual(exact);
});

test('a record of the weather is the weather it grew in', () => {
  const path = join(folder, 'hot.csv');
  const days = Array.from({ length: 240 }, (_, day) => {
    const date = new Date(Date.UTC(2019, 2, 1 + day)).toISOString().slice(0, 10);
    return `${date},${14 + (day % 7)},${27 + (day % 5)}`;
  });
  writeFileSync(path, ['date,temp_min_c,temp_max_c', ...days, ''].join('\n'));
  const season = ['Leeds', '--start', 'sets', '--date', '2019-04-05', '--seen', 'small'];
  const hot = documentOf(...season, '--weather', path);
  expect(hot.asGrown.neckFall && hot.asGrown.neckFall < (documentOf(...season).asGrown.neckFall ?? '')).toBe(
    true,
  );
  expect(hot.assumed.some((sentence) => sentence.includes('as measured'))).toBe(true);
});

describe('the text', () => {
  const { code, stdout } = why(...largeSets);
  const text = plain(stdout);

  test('says what the document says, what can be saved before why', () => {
    expect(code).toBe(0);
    expect(text.startsWith(plain(flowered.answer))).toBe(true);
    const places = [flowered.rescue[0], flowered.causes[0].for[0], flowered.cautions[0], 'How we know'].map(
      (sentence) => text.indexOf(plain(sentence)),
    );
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
    for (const sentence of [...flowered.rescue, ...flowered.cautions])
      expect(text).toContain(plain(sentence));
  });

  test('is short enough to be read', () => {
    for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
    expect(stdout.split('\n').length).toBeLessThan(75);
  });

  test('shows how to answer what is asked', () => {
    const asked = why('Leeds', '--start', 'sets', '--date', '04-05', '--seen', 'flowered').stdout;
    expect(asked).toContain('--said set-size=walnut');
  });

  test('speaks American, in inches, and Spanish', () => {
    const american = why(...largeSets, '--units', 'us').stdout;
    expect(american).toMatch(/\d in\b/);
    expect(american).not.toMatch(/\d (mm|cm)\b/);
    const spanish = why(...largeSets, '--lang', 'es').stdout;
    expect(spanish).toContain('Qué se puede salvar:');
    expect(spanish).not.toMatch(/\b(the|sets|bulbs|without)\b/);
  });
});

describe('what may be seen', () => {
  test('is listed with what tells it from its like', () => {
    const { code, stdout } = neckfall('why', '--list');
    expect(code).toBe(0);
    for (const id of symptoms) expect(stdout).toContain(`  ${id} `);
  });

  test('as a document and as a table', () => {
    const list = JSON.parse(neckfall('why', '--list', '--json').stdout);
    expect(list.map(({ id }: { id: string }) => id)).toEqual([...symptoms]);
    for (const { label, note } of list) expect(label.length * note.length).toBeGreaterThan(0);
    const { data } = Papa.parse(neckfall('why', '--list', '--csv').stdout.trim(), { header: true });
    expect(data).toEqual(list);
  });

  test('in Spanish', () => {
    const { stdout } = neckfall('why', '--list', '--lang', 'es');
    expect(stdout).toContain('  flowered           Se espigaron. ');
  });
});

test('shares that make 1 still do when rounded, each to the nearest thousandth or the next', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 30 }),
      (raw) => {
        const sum = raw.reduce((a, b) => a + b, 0);
        fc.pre(sum > 0);
        const shares = raw.map((one) => one / sum);
        const parts = partsOfOne(shares);
        expect(parts.reduce((a, b) => a + Math.round(1000 * b), 0)).toBe(1000);
        for (const [at, part] of parts.entries())
          expect(Math.abs(part - shares[at])).toBeLessThanOrEqual(0.001);
      },
    ),
    { seed: 20_270_503 },
  );
});
