import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { neckfall, neckfallQuick, testDay } from '../run-neckfall.ts';

const schema = JSON.parse(readFileSync(new URL('../../schemas/handout@1.json', import.meta.url), 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);

function documentOf(...args: string[]) {
  const { code, stdout, stderr } = neckfallQuick(...args, '--json');
  if (code !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
}

const flat = (text: string) => text.replace(/\s+/g, ' ');

describe.each(['Leeds', 'Nairobi', 'Dunedin', 'Austin, US'])('the sheet of %s', (town) => {
  const sheet = documentOf('handout', town);
  const { crop } = sheet;
  const plan = ['--class', crop.class, '--start', crop.start, '--date', crop.date];

  test('is a document of its schema', () => {
    validate(sheet);
    expect(validate.errors).toBeNull();
  });

  test('has the headline of `where`, to the letter', () => {
    expect(flat(neckfallQuick('where', town).stdout)).toContain(sheet.verdict);
  });

  test('has the dates and sizes of `season` for the crop that it names', () => {
    const season = documentOf('season', town, ...plan);
    expect(season.plan.type).toBe(crop.type);
    for (const key of [
      'emergence',
      'plantOut',
      'onset',
      'neckFall',
      'bulbDiameterMm',
      'seasonShares',
      'emergedShare',
    ])
      expect({ [key]: crop[key] }).toEqual({ [key]: season[key] });
    const told = flat(neckfallQuick('season', town, ...plan).stdout);
    for (const { middle, range } of sheet.when.slice(1))
      expect(told).toContain(flat(`${middle} ${range}`).trim());
  });

  test('has the days of `jobs`', () => {
    const { jobs } = documentOf('jobs', town, ...plan);
    const day = (date: string) => Number(date.slice(8));
    const lift = jobs.find(({ job }: { job: string }) => job === 'lift');
    const row = sheet.work.find(({ what }: { what: string }) => /^(Lift|Pull as)/.test(what));
    expect(row.days).toContain(String(day(lift.from)));
    expect(row.days).toContain(String(day(lift.to)));
    expect(sheet.work.length).toBeGreaterThanOrEqual(8);
  });

  test('keeps its cautions', () => {
    const said = sheet.cautions.join(' ');
    for (const words of ['not food', 'across borders', 'Labels and local rules', 'not a promise'])
      expect(said).toContain(words);
  });
});

test('where no crop is advised it says what to grow instead, and nothing to buy', () => {
  const sheet = documentOf('handout', 'Tromsø');
  validate(sheet);
  expect(validate.errors).toBeNull();
  expect(sheet.verdict).toContain('Grow bunching onions, shallots');
  expect([sheet.buy, sheet.when, sheet.work]).toEqual([[], [], []]);
  expect(sheet.theYear.length).toBeGreaterThan(1);
});

test('a metre of row takes ten plants at the usual 10 cm, ten feet thirty', () => {
  const metric = documentOf('handout', 'Austin, US', '--today', testDay);
  expect(metric.buy.join(' ')).toMatch(/For 1 m of row: .*10 cm/);
});

describe('what is asked wrongly is refused in a line', () => {
  test.each([
    [['Leeds'], /--out with a name that ends in .html or .pdf/],
    [['Leeds', '--out', 'x.doc'], /--out x.doc: expected a name that ends in .html or .pdf/],
    [['Leeds', '--json', '--paper', 'a5'], /--paper a5: expected a4 or letter/],
    [
      ['Leeds', '--json', '--heading', 'onion '.repeat(15)],
      /--heading: 15 words in 89 characters; at most 14 words/,
    ],
    [['Leeds', '--json', '--note', 'x'.repeat(601)], /--note: one word|--note: 1 word in 601 characters/],
    [['Leeds', '--as', 'pdf', '--json'], /--as goes with --batch/],
    [['--batch', 'x.csv'], /--batch needs --out/],
    [['--batch', 'x.csv', '--json', '--out', 'y'], /--json does not go with --batch/],
  ])('%s', (args, line) => {
    const { code, stdout, stderr } = neckfall('handout', ...args);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toMatch(line);
  });
});
