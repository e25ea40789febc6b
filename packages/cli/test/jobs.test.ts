import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-jobs-'));
const example = new URL('../../../docs/examples/pencarreg.neckfall.json', import.meta.url);
const schema = JSON.parse(readFileSync(new URL('../schemas/jobs@1.json', import.meta.url), 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);

function gardenAt(name: string): string {
  const path = join(folder, name);
  writeFileSync(path, readFileSync(example));
  return path;
}

type Document = { jobs: { id: string; planting: string | null; job: string; state: string; why: string }[] };
const jobsOf = (...args: string[]): Document => JSON.parse(neckfall('jobs', ...args, '--json').stdout);

describe('work on the crops of a garden', () => {
  test('passes its published schema, of a garden and of a plan', () => {
    const garden = gardenAt('schema.neckfall.json');
    const plan = ['Lyon', '--class', 'long', '--start', 'sets', '--date', '03-20'];
    for (const args of [[garden], plan]) {
      const document = jobsOf(...args, '--today', '2027-03-01');
      expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
      expect(document.jobs.length).toBeGreaterThan(10);
      for (const { why } of document.jobs) expect(why).toMatch(/\S.*[.?]$/);
    }
  });

  test('opens with at most five sentences of this week', () => {
    const { stdout } = neckfall('jobs', gardenAt('week.neckfall.json'), '--today', '2027-06-20');
    const [week] = stdout.split('\n\n');
    expect(week).toMatch(/^Pencarreg Bank, this week/);
    const sentences = week.split('\n').filter((line) => /^ {2}\S/.test(line) && /(trays|sets): /.test(line));
    expect(sentences.length).toBeGreaterThan(0);
    expect(sentences.length).toBeLessThanOrEqual(5);
  });

  test('what is said of a job is kept in the garden file, and holds', () => {
    const garden = gardenAt('marks.neckfall.json');
    const before = readFileSync(garden, 'utf8');
    const said = ['--planting', 'okoro', '--today', '2027-05-01'];
    expect(neckfall('jobs', garden, ...said, '--done', 'weed').code).toBe(0);
    const after = JSON.parse(readFileSync(garden, 'utf8'));
    expect(after.jobs).toMatchObject([
      { plantingId: 'okoro', job: 'weed', state: 'done', date: '2027-05-01' },
    ]);
    expect({ ...after, jobs: [] }).toEqual(JSON.parse(before));
    const stateOf = (planting: string) =>
      jobsOf(garden, '--today', '2027-05-02').jobs.find(
        (job) => job.planting === planting && job.job === 'weed',
      )?.state;
    expect(stateOf('okoro')).toBe('done');
    expect(stateOf('tarrant')).not.toBe('done');
  });

  test('a calendar is read back, stays as it is, and is updated on a later day', () => {
    const garden = gardenAt('calendar.neckfall.json');
    const ics = join(folder, 'work.ics');
    const write = (today: string) => {
      expect(neckfall('jobs', garden, '--today', today, '--ics', ics).code).toBe(0);
      return readFileSync(ics, 'utf8');
    };
    const eventsOf = (text: string) =>
      new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((event) => ({
        uid: String(event.getFirstPropertyValue('uid')),
        sequence: Number(event.getFirstPropertyValue('sequence')),
        isDay: (event.getFirstPropertyValue('dtstart') as unknown as { isDate: boolean }).isDate,
      }));
    const first = write('2027-03-01');
    const events = eventsOf(first);
    expect(events.length).toBeGreaterThan(20);
    expect(events.every(({ isDay }) => isDay)).toBe(true);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    expect(write('2027-03-01')).toBe(first);
    const sequences = new Map(events.map(({ uid, sequence }) => [uid, sequence]));
    const later = eventsOf(write('2027-04-01')).filter(({ uid }) => sequences.has(uid));
    expect(later.length).toBeGreaterThan(20);
    for (const { uid, sequence } of later) expect(sequence).toBeGreaterThan(sequences.get(uid) ?? 0);
  });

  test.each([
    [['--from', '2027-02-30'], '--from'],
    [['--planting', 'tarrant', '--done', 'mow'], 'mow'],
    [['--done', 'weed'], '--planting'],
    [['--planting', 'tarrant', '--put-off', 'weed'], '--put-off'],
  ])('%j is refused in one line, and nothing is written', (args, named) => {
    const garden = gardenAt('refused.neckfall.json');
    const before = readFileSync(garden, 'utf8');
    const { code, stdout, stderr } = neckfall('jobs', garden, ...args, '--today', '2027-05-01');
    expect([2, 3]).toContain(code);
    expect(stdout).toBe('');
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(stderr).toContain(named);
    expect(readFileSync(garden, 'utf8')).toBe(before);
  });
});
