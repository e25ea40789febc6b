import { readFileSync } from 'node:fs';
import { catalogueSources, cultivars, startFacts, startTopics } from '@neckfall/data';
import { startMethods } from '@neckfall/engine';
import { allMessages, speaker } from '@neckfall/words';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { cultivarText } from '../src/text/cultivars-text.ts';
import { neckfall } from './run-neckfall.ts';

const english = await allMessages('en');

const schema = JSON.parse(readFileSync(new URL('../schemas/cultivars@1.json', import.meta.url), 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);

/** What the command prints, its line breaks taken out. */
function textOf(...args: string[]): string {
  const { code, stdout, stderr } = neckfall('cultivars', ...args);
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  return stdout.replace(/\s+/g, ' ');
}

function documentOf(...args: string[]) {
  const { code, stdout } = neckfall('cultivars', ...args, '--json');
  expect(code).toBe(0);
  const document = JSON.parse(stdout);
  validate(document);
  expect(validate.errors).toBeNull();
  return document;
}

function refusal(...args: string[]): string {
  const { code, stdout, stderr } = neckfall('cultivars', ...args);
  expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
  expect(stderr.trimEnd()).not.toContain('\n');
  return stderr;
}

describe('neckfall cultivars', () => {
  test('lists every onion, a line each', () => {
    const { stdout } = neckfall('cultivars');
    const lines = stdout.split('\n');
    for (const { name } of cultivars)
      expect(lines.filter((line) => line.startsWith(`  ${name}  `))).toHaveLength(1);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(110);
  });

  test('gives all as one document, each origin a listed source or memory', () => {
    const document = documentOf();
    expect(document.cultivars).toHaveLength(cultivars.length);
    for (const { origins } of document.cultivars) {
      for (const origin of Object.values<string>(origins)) {
        if (origin !== 'memory') expect(document.sourcesByKey).toHaveProperty(origin);
      }
    }
  });

  test('gives all as a table', () => {
    const rows = neckfall('cultivars', '--csv').stdout.trimEnd().split('\r\n');
    expect(rows).toHaveLength(cultivars.length + 1);
    expect(rows[0].startsWith('id,name,aliases')).toBe(true);
  });

  test('shows one in full with its sources, by either of its names', () => {
    const text = textOf('creamgold');
    expect(text).toMatch(/^Pukekohe Longkeeper: an early long-day onion with brown skin\./);
    expect(text).toContain('Also called Creamgold');
    expect(text).toContain('13 h 45 min of day, twilight counted (source');
    expect(text).toContain(catalogueSources['lancaster-1996'].title);
    expect(documentOf('creamgold').cultivars).toMatchObject([{ name: 'Pukekohe Longkeeper' }]);
  });

  test('filters by class and colour', () => {
    const { cultivars: found } = documentOf('--class', 'short', '--colour', 'white');
    expect(found.length).toBeGreaterThan(3);
    for (const onion of found) expect(onion).toMatchObject({ class: 'short', colour: 'white' });
  });

  test('searches names, also where a name is not known whole', () => {
    const names = (...args: string[]) =>
      documentOf(...args).cultivars.map(({ name }: { name: string }) => name);
    expect(names('--find', 'granex')).toContain('White Granex');
    expect(names('Bhima')).toEqual(names('--find', 'bhima'));
  });

  test('says where no onion is like that', () => {
    expect(textOf('--find', 'xqzw')).toMatch(/^No onion in the list is like that\./);
    expect(documentOf('--find', 'xqzw').cultivars).toEqual([]);
  });

  test('says that shallots are listed only', () => {
    expect(textOf('Trisula')).toContain('Neckfall can’t tell how they will do');
  });

  test('refuses an unknown onion and offers the nearest', () => {
    expect(refusal('sturton')).toContain('No onion "sturton" in the list. Did you mean Sturon?');
    expect(refusal('—')).toContain('No onion "—"');
  });

  test('refuses what does not go together', () => {
    expect(refusal('Sturon', '--class', 'long')).toContain('--class does not go with "Sturon"');
    expect(refusal('--colour', 'blu')).toContain('yellow, brown, red, pink or white');
    expect(refusal('Walla', 'Walla')).toContain('"Walla Walla"');
    expect(refusal('--json', '--csv')).toContain('--json');
  });

  test('its help ends with an example that works', () => {
    const example =
      /^ {2}neckfall cultivars "(.*)"$/m.exec(neckfall('cultivars', '--help').stdout)?.[1] ?? '';
    expect(textOf(example)).toContain(`${example}: `);
  });
});

describe('words', () => {
  const voice = speaker('metric');

  test('are there for every onion, without holes', () => {
    for (const cultivar of cultivars) {
      const text = cultivarText(cultivar, voice);
      expect(text).not.toMatch(/undefined|null|NaN|[{}]|\(\)/);
      expect(text.startsWith(`${cultivar.name}: a`)).toBe(true);
    }
  });

  test('are there for each fact on starting, and for no other', () => {
    const facts = startMethods.flatMap((start) =>
      startTopics.flatMap((topic) => startFacts[start].facts[topic]),
    );
    const keys = Object.keys(english).filter((key) => key.startsWith('start-fact.'));
    expect(new Set(facts.map(({ code }) => `start-fact.${code}`))).toEqual(new Set(keys));
    for (const fact of facts) expect(voice.fact(fact)).toMatch(/^[^{}]*\.$/);
  });

  test('turn figures on starting into the units asked for', () => {
    const size = startFacts.sets.facts.bolting.find(({ code }) => code === 'sets-size');
    expect(voice.fact(size as never)).toContain('18 mm');
    expect(speaker('us').fact(size as never)).toContain('0.7 in');
  });

  test('are there for each level of each topic', () => {
    for (const start of startMethods) {
      for (const [topic, level] of Object.entries(startFacts[start].levels)) {
        expect(Object.keys(english)).toContain(`start-level.${topic}.${level}`);
      }
    }
  });
});
