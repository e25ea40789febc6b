import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { commonQuestions } from '../../engine/src/index.ts';
import { folder, makeFolder } from './batch/lines-of.ts';
import { neckfall, neckfallQuick } from './run-neckfall.ts';

const ajv = new Ajv({ strict: true, allErrors: true });
const schemaOf = (name: string) =>
  ajv.compile(JSON.parse(readFileSync(new URL(`../schemas/${name}@1.json`, import.meta.url), 'utf8')));

function documentOf(...args: string[]) {
  const { code, stdout } = neckfallQuick('answer', ...args, '--json');
  expect(code).toBe(0);
  const document = JSON.parse(stdout);
  const validate = schemaOf('answers');
  validate(document);
  expect(validate.errors).toBeNull();
  return document;
}

type Told = { question: string; answer: string; seasons: { role: string; plan: Record<string, unknown> }[] };

describe('neckfall answer', () => {
  test.each([['Leeds'], ['Nairobi'], ['--at=-45.87,170.5']])('tells all ten at %s', (...place) => {
    const { answers } = documentOf(...place);
    expect(answers.map(({ question }: Told) => question)).toEqual(commonQuestions);
    for (const { answer } of answers as Told[]) expect(answer).not.toMatch(/[{}]|undefined|NaN/);
  });

  test('one in full, by its name or in words of one’s own, of a town or a point', () => {
    for (const args of [
      ['Leeds', 'kitchen-onions'],
      ['Leeds', 'plant supermarket onions'],
      ['--at', '53.8,-1.55', 'supermarket'],
    ]) {
      const { code, stdout } = neckfallQuick('answer', ...args);
      expect(code).toBe(0);
      expect(stdout).toContain('Can I plant supermarket onions?');
      expect(stdout).toContain('white rot');
      expect(stdout).toContain('How we know');
    }
  });

  test('says of which onion to buy what where says, and of how many what keep says', () => {
    const where = neckfallQuick('where', 'Leeds').stdout.split('\n\n')[0].replace(/\s+/g, ' ');
    const { answers } = documentOf('Leeds');
    const of = (id: string) => answers.find(({ question }: Told) => question === id);
    expect(where).toContain(of('which-onion').answer);
    const keep = JSON.parse(neckfallQuick('keep', 'Leeds', '--people', '2', '--json').stdout);
    expect(of('how-many').kitchen.bedM2).toBe(keep.bedM2);
    expect(of('how-many').answer.slice(-40)).toBe(keep.answer.slice(-40));
  });

  test('counts flowers as season does', () => {
    const [{ seasons }] = documentOf('Leeds', 'sets-flower').answers;
    const large = seasons.find(({ role }: { role: string }) => role === 'large-sets');
    const { plan } = large;
    const season = neckfallQuick(
      'season',
      'Leeds',
      ...['--class', plan.class, '--start', plan.start, '--date', plan.date],
      ...['--set-size', String(plan.setSizeMm), '--set-store', plan.setStore, '--json'],
    );
    const document = JSON.parse(season.stdout);
    expect(document.boltedPlantsShare).toEqual(large.boltedPlantsShare);
    expect(document.seasonShares).toEqual(large.seasonShares);
  });

  test('gives the picture of one answer, with the question and the answer over it', () => {
    makeFolder();
    const out = join(folder, 'flower.svg');
    const { stdout } = neckfallQuick('answer', 'Leeds', 'sets-flower');
    expect(neckfallQuick('answer', 'Leeds', 'sets-flower', '--out', out)).toMatchObject({
      code: 0,
      stdout: '',
    });
    const svg = readFileSync(out, 'utf8');
    const [, title] = /<title>(.*?)<\/title>/.exec(svg)!;
    expect(title).toMatch(/^Why do my neighbo.*sets flower\? Leeds/);
    expect(stdout).toContain(title.split('? ')[1].split('. ')[0]);
    // whole words of it stand over the picture too
    expect(
      svg.replaceAll(/<metadata>.*<\/metadata>|<desc>.*<\/desc>/gs, '').match(/sets flower/g),
    ).toHaveLength(2);
    expect(svg).toContain('<metadata>Neckfall');
    expect(neckfallQuick('answer', 'Leeds', '--out', join(folder, 'ten.png'))).toMatchObject({
      code: 2,
      stdout: '',
    });
  });

  test.each([
    ['how many for a family of four?', [], 4],
    ['how many onions for 6 people', [], 6],
    ['how many for a family of four?', ['--people', '3'], 3],
    ['how many', [], 2],
  ])('hears in "%s" %s how many eat', (text, options, people) => {
    const [{ kitchen, answer }] = documentOf('Leeds', text, ...options).answers;
    expect(kitchen.people).toBe(people);
    expect(answer).toContain(`for ${people} people`);
  });

  test('lists the ten', () => {
    const list = JSON.parse(neckfall('answer', '--list', '--json').stdout);
    expect(list.map(({ id }: { id: string }) => id)).toEqual(commonQuestions);
  });

  test('has a row a season as CSV', () => {
    const { stdout } = neckfallQuick('answer', 'Leeds', 'sets-flower', '--csv');
    const [head, ...rows] = stdout.trim().split('\r\n');
    expect(head).toContain('question,asked,answer,role');
    expect(rows).toHaveLength(3);
  });

  test('answers each row of a file', () => {
    makeFolder();
    const file = join(folder, 'answers.csv');
    writeFileSync(file, 'id,latitude,longitude\na,53.8,-1.55\nb,999,0\n');
    const { code, stdout } = neckfallQuick('answer', '--batch', file);
    const lines = stdout
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect({ code, ids: lines.map(({ id }) => id) }).toEqual({ code: 0, ids: ['a', 'b'] });
    const validate = schemaOf('answers-line');
    for (const line of lines) expect(validate(line)).toBe(true);
    expect(lines[0].answers).toHaveLength(10);
    expect(lines[1].error.field).toContain('latitude');
  });

  test.each<[string, string[], string[]]>([
    ['no place', [], ['Which place?']],
    ['a question that is none', ['Leeds', 'xyzzyq'], ['"xyzzyq"', '--list']],
    ['what two questions might mean', ['Leeds', 'small sets in winter'], ['Nearest:']],
    ['what dates answer', ['Leeds', 'when do I sow?'], ['none of the ten questions: `neckfall when PLACE`']],
    ['what went wrong', ['Leeds', 'my onions rot'], ['`neckfall why PLACE`']],
    ['what kinds answer', ['Leeds', 'sets or seed?'], ['`neckfall which PLACE`']],
    ['a kitchen of nobody', ['Leeds', '--people', '0'], ['--people 0']],
    ['a store that is none', ['Leeds', '--store', 'attic'], ['--store attic', 'cellar']],
    ['places and a file of places', ['Leeds', '--batch', 'x.csv'], ['Leeds']],
  ])('refuses %s', (_, args, words) => {
    const { code, stdout, stderr } = neckfall('answer', ...args);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    for (const word of words) expect(stderr).toContain(word);
  });
});
