import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-record-'));
afterAll(() => rmSync(folder, { recursive: true }));
const file = join(folder, 'bank.neckfall.json');

/** As someone writes it by hand: fields unknown here, a number that no program would write so, entries a line each. */
const written = `{
  "schema": "neckfall/garden@1",
  "keeper": "Ines Tarrant",
  "plantings": [
    { "id": "first", "name": "The long bed", "start": "sets", "startDate": "2027-03-20", "plants": 120, "rowDistanceCm": 3e1, "plantDistanceCm": 10.0 },
    { "id": "wall", "name": "By the wall", "weededBy": "Bram Okoro" },
    { "id": "twin-1", "name": "Twin" },
    { "id": "twin-2", "name": "Twin" }
  ],
  "observations": [
    { "id": "o1", "plantingId": "first", "date": "2027-05-10", "leavesGreen": 5, "seenBy": "Bram Okoro" },
    { "id": "o2", "plantingId": "gone", "date": "2027-05-11", "leavesGreen": 4 }
  ]
}
`;
beforeEach(() => writeFileSync(file, written));

const text = () => readFileSync(file, 'utf8');
const record = (...args: string[]) => neckfall('record', file, ...args, '--today', '2027-06-20');
const ofFirst = (...args: string[]) => record('--planting', 'first', ...args);
/** What stands in the file now and did not before. */
const added = () => JSON.parse(text()).observations.at(-1);

describe('what was seen', () => {
  test('stands in the file as what is there does, and nothing else of it changes', () => {
    const { code, stdout } = ofFirst('--leaves', '7,5', '--looked-at', '10', '--date', '06-18');
    expect(code).toBe(0);
    const { id } = added();
    expect(id).toMatch(/^[a-z2-9]{10}$/);
    const line = `{ "id": "${id}", "plantingId": "first", "date": "2027-06-18", "leavesGreen": 7.5, "lookedAt": 10 }`;
    expect(text()).toBe(written.replace('"leavesGreen": 4 }', `"leavesGreen": 4 },\n    ${line}`));
    const [told, ...table] = stdout.split('\n\n');
    expect(told.replace(/\s+/g, ' ')).toBe(
      `The long bed: noted for 18 June 2027. ${file} now holds 2 entries of it.`,
    );
    expect(table).toEqual([
      '  Date          Leaves  Looked at\n  10 May 2027        5\n  18 June 2027     7.5         10\n',
    ]);
  });

  test('is every field of an observation, in metric units', () => {
    const args =
      '--neck 14.2 --bulb 40 --stand 110 --flowering 2 --tops-over 0.1 --watered 30 --fed 10-4-8:150.5'.split(
        ' ',
      );
    ofFirst(...args, '--lifted', '--weighed', '8.25', '--count', '100', '--note', ' After rain. ');
    expect(added()).toMatchObject({
      date: '2027-06-20',
      neckMm: 14.2,
      bulbMm: 40,
      standCount: 110,
      floweringCount: 2,
      topsOverShare: 0.1,
      wateredLitres: 30,
      fedProduct: '10-4-8',
      fedG: 150.5,
      lifted: true,
      weighedKg: 8.25,
      bulbCount: 100,
      note: 'After rain.',
    });
    ofFirst('--count', '90', '--thick-necks', '9');
    expect(added()).toMatchObject({ bulbCount: 90, thickNeckCount: 9 });
    ofFirst('--sound', '80', '--sprouted', '3', '--rotten', '2');
    expect(added()).toMatchObject({ soundCount: 80, sproutedCount: 3, rottenCount: 2 });
  });

  // inch, US gallon, ounce and pound: NIST Handbook 44, appendix C
  test('is given and told in inches, gallons, ounces and pounds where those are asked for', () => {
    const args = ['--neck', '0.5', '--bulb', '2', '--watered', '10', '--fed', '10-4-8:8', '--weighed', '5'];
    const { stdout } = ofFirst(...args, '--units', 'us');
    expect(added()).toMatchObject({
      neckMm: 12.7,
      bulbMm: 50.8,
      wateredLitres: 37.85,
      fedG: 226.8,
      weighedKg: 2.268,
    });
    for (const told of ['0.5 in', '2 in', '10 gal', '10-4-8: 8 oz', '5 lb']) expect(stdout).toContain(told);
    ofFirst('--neck', '1', '--units', 'us', '--json');
    expect(added().neckMm).toBe(25.4);
  });

  test('is of the last such day, or of a day of any year', () => {
    for (const [given, day] of [
      ['06-20', '2027-06-20'],
      ['06-21', '2026-06-21'],
      ['02-29', '2024-02-29'],
      ['2019-07-01', '2019-07-01'],
    ]) {
      ofFirst('--note', 'x', '--date', given);
      expect(added().date).toBe(day);
    }
  });

  test('names its planting by the name too, where only one is called so', () => {
    expect(record('--planting', ' by THE wall', '--leaves', '3').code).toBe(0);
    expect(added().plantingId).toBe('wall');
  });

  test('of a planting without an id gives it one that stays', () => {
    writeFileSync(file, written.replace('"id": "wall", ', ''));
    expect(record('--planting', 'By the wall', '--leaves', '3').code).toBe(0);
    const now = JSON.parse(text());
    expect(now.plantings[1]).toMatchObject({
      id: added().plantingId,
      name: 'By the wall',
      weededBy: 'Bram Okoro',
    });
    expect(now.keeper).toBe('Ines Tarrant');
  });

  test('is noted and asked about where it is odd', () => {
    const { code, stderr } = ofFirst('--leaves', '1', '--flowering', '500');
    expect(code).toBe(0);
    expect(added()).toMatchObject({ leavesGreen: 1, floweringCount: 500 });
    expect(stderr.trimEnd().split('\n')).toEqual([
      '1 green leaf now, 5 on 10 May 2027: did so many wither, or were other plants counted?',
      '500 plants are in flower, and 120 stand in all. Is one of the two from another bed?',
    ]);
  });

  test('is told as one document that passes its published schema, and as a table', () => {
    const validate = new Ajv({ strict: true, allErrors: true }).compile(
      JSON.parse(readFileSync(new URL('../schemas/record@1.json', import.meta.url), 'utf8')),
    );
    const document = JSON.parse(ofFirst('--leaves', '1', '--lifted', '--json').stdout);
    validate(document);
    expect(validate.errors).toBeNull();
    expect(document).toMatchObject({
      recorded: added().id,
      questions: [{ code: 'leaves-fewer' }],
      observations: [{ id: 'o1', seenBy: 'Bram Okoro' }, { lifted: true }],
    });
    const rows = ofFirst('--note', '=1+1', '--csv').stdout.split('\r\n');
    expect(rows[0]).toMatch(/^date,lookedAt,leavesGreen,.*,note,id$/);
    expect(rows).toHaveLength(5);
    expect(rows[3]).toContain("'=1+1");
  });

  test('may be told in Spanish, and into another file', () => {
    const out = join(folder, 'told.txt');
    expect(ofFirst('--leaves', '6', '--lang', 'es', '--out', out)).toEqual({
      code: 0,
      stdout: '',
      stderr: '',
    });
    expect(readFileSync(out, 'utf8')).toContain('anotado el 20 de junio de 2027');
  });
});

describe('nothing is noted, and one line says why,', () => {
  const cases: [string, string[], number, string[]][] = [
    ['where nothing was seen', ['--planting', 'first'], 2, ['Nothing to note', '--leaves 5']],
    [
      'where only how many were looked at',
      ['--planting', 'first', '--looked-at', '9'],
      2,
      ['Nothing to note'],
    ],
    ['without a planting', ['--leaves', '5'], 2, ['--planting is missing']],
    [
      'of an unknown planting',
      ['--planting', 'frist', '--leaves', '5'],
      2,
      ['frist', 'first', 'By the wall (wall)'],
    ],
    [
      'of one of two of a name',
      ['--planting', 'Twin', '--leaves', '5'],
      2,
      ['Twin (twin-1) or Twin (twin-2)'],
    ],
    ['beyond a range', ['--planting', 'first', '--leaves', '31'], 2, ['--leaves 31', '0 to 30']],
    ['of half a plant', ['--planting', 'first', '--stand', '1.5'], 2, ['--stand 1.5', 'whole number']],
    [
      'of a feed of another form',
      ['--planting', 'first', '--fed', '10-4:3'],
      2,
      ['--fed 10-4:3', '10-4-8:200'],
    ],
    [
      'of a day that is none',
      ['--planting', 'first', '--leaves', '5', '--date', '02-30'],
      2,
      ['no such day'],
    ],
    ['of a note too long', ['--planting', 'first', '--note', 'x'.repeat(2001)], 2, ['2,001', '2,000']],
    [
      'where the answer would take the place of the file',
      ['--planting', 'first', '--leaves', '5', '--out', file],
      3,
      ['GARDEN reads'],
    ],
    [
      'where the answer could not be written',
      ['--planting', 'first', '--leaves', '5', '--out', join(folder, 'none', 'x')],
      3,
      ['--out', 'does not exist'],
    ],
  ];
  test.each(cases)('%s', (_, args, exit, says) => {
    const { code, stdout, stderr } = record(...args);
    expect({ code, stdout }).toEqual({ code: exit, stdout: '' });
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    for (const said of says) expect(stderr).toContain(said);
    expect(text()).toBe(written);
  });

  test.each([
    ['another document', '{"schema":"neckfall/season@1"}', 'neckfall/garden@1 was expected'],
    ['no JSON', '{"schema"', 'no JSON'],
    ['a list', '[]', 'no garden file'],
  ])('where the file is %s', (_, content, says) => {
    writeFileSync(file, content);
    const { code, stderr } = ofFirst('--leaves', '5');
    expect(code).toBe(3);
    expect(stderr).toContain(says);
    expect(text()).toBe(content);
  });

  test('where there is no file, or none that can be changed', () => {
    for (const path of [join(folder, 'none.json'), folder, '/dev/null'])
      expect(neckfall('record', path, '--planting', 'first', '--leaves', '5').code).toBe(3);
    expect(neckfall('record').stderr).toContain('Which garden?');
  });
});
