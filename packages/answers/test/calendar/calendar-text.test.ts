import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { dayNumber, formatDay } from '@neckfall/engine';
import { loadLanguage, loadLater, shown, speaker } from '@neckfall/words';
import ICAL from 'ical.js';
import { afterAll, expect, test } from 'vitest';
import { calendarText, jobName, renewed, sequenceOf } from '../../src/index.ts';
import { crops } from './some-crops.ts';

await loadLater();
await loadLanguage('es');
const today = dayNumber(2027, 2, 1);
const mark = { id: 'm', plantingId: 'p1', job: 'trim', date: '2027-02-01' } as const;
const grown = crops(today);
const english = speaker('metric');
const stamp = { today, sequence: sequenceOf(today) };
const text = calendarText(grown, stamp, english);

/** What a reader finds of each event. */
function eventsIn(calendar: string) {
  const component = new ICAL.Component(ICAL.parse(calendar));
  return component.getAllSubcomponents('vevent').map((found) => {
    const event = new ICAL.Event(found);
    return {
      uid: event.uid,
      date: event.startDate.toString(),
      isDay: event.startDate.isDate,
      summary: event.summary,
      description: event.description,
      sequence: event.sequence,
      stamp: String(found.getFirstPropertyValue('dtstamp')),
      status: found.getFirstPropertyValue('status'),
    };
  });
}

test('a reader finds each open job on its best day, whole, whatever its crop is called', () => {
  const events = eventsIn(text);
  const open = grown.flatMap((crop) =>
    crop.jobs.filter(({ state }) => state !== 'gone-by').map((job) => ({ crop, job })),
  );
  expect(events.length).toBeGreaterThan(30);
  expect(events.map(({ uid, date, isDay }) => ({ uid, date, isDay }))).toEqual(
    open.map(({ crop, job }) => ({
      uid: `${crop.id}-${job.id}@neckfall`,
      date: formatDay(job.best),
      isDay: true,
    })),
  );
  for (const [at, { crop, job }] of open.entries())
    expect(events[at].summary).toBe(`${jobName(job, english)}: ${shown(crop.name)}`);
  expect(new Set(events.map(({ date }) => date.slice(0, 4)))).toEqual(new Set(['2027', '2028']));
  expect(events[0].description.split('\n').length).toBeGreaterThan(2);
  expect(events.every(({ stamp: at }) => at === '2027-02-01T00:00:00Z')).toBe(true);
});

test('lines are folded at 75 octets and end as RFC 5545 has it', () => {
  expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
  const lines = text.split('\r\n');
  expect(lines.join('').includes('\n')).toBe(false);
  expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBe(75);
});

test('what was left out is cancelled, what was done stays, what has gone by is not told again', () => {
  const late = dayNumber(2027, 3, 25);
  const marks = [
    { ...mark, job: 'trim', state: 'left-out' },
    { ...mark, job: 'sow', state: 'done' },
  ] as const;
  const events = eventsIn(calendarText(crops(late, marks), { today: late, sequence: 1 }, english));
  const of = (job: string) => events.find(({ uid }) => uid === `p1-${job}@neckfall`);
  expect(of('trim')?.status).toBe('CANCELLED');
  expect(of('sow')).toMatchObject({
    status: 'CONFIRMED',
    description: expect.stringContaining('Sow: done.'),
  });
  expect(of('prick-out')).toBeUndefined();
  expect(of('lift')?.status).toBe('CONFIRMED');
});

test('a second calendar holds the same events under higher numbers, or is the first where nothing changed', () => {
  const make = (of: typeof grown, day: number) => (sequence: number) =>
    calendarText(of, { today: day, sequence }, english);
  const first = renewed(null, stamp.sequence, make(grown, today));
  expect(first).toBe(text);
  expect(renewed(first, sequenceOf(today + 3), make(crops(today + 3), today + 3))).toBe(first);
  const marks = [{ ...mark, state: 'put-off', until: '2027-04-01' }] as const;
  // the same day, and even one that lies back
  for (const day of [today, today - 30, today + 1]) {
    const again = eventsIn(renewed(first, sequenceOf(day), make(crops(today, marks), day)));
    const before = eventsIn(first);
    expect(again.map(({ uid }) => uid).toSorted()).toEqual(before.map(({ uid }) => uid).toSorted());
    expect(again[0].sequence).toBe(Math.max(sequenceOf(day), stamp.sequence + 1));
    expect(again.find(({ uid }) => uid === 'p1-trim@neckfall')?.date).toBe('2027-04-08');
  }
});

test('a calendar of other crops is written anew', () => {
  const others = grown.map((crop) => ({ ...crop, id: `other-${crop.id}` }));
  const make = (sequence: number) => calendarText(others, { today, sequence }, english);
  expect(eventsIn(renewed(text, 5, make))[0].sequence).toBe(5);
});

test('in another language and other units the events are the same', () => {
  const spanish = eventsIn(calendarText(grown, stamp, speaker('metric', 'es')));
  const american = eventsIn(calendarText(grown, stamp, speaker('us')));
  const key = ({ uid, date }: { uid: string; date: string }) => `${uid} ${date}`;
  expect(spanish.map(key)).toEqual(eventsIn(text).map(key));
  expect(american.map(key)).toEqual(spanish.map(key));
  expect(spanish[0].summary).not.toBe(american[0].summary);
});

const folder = mkdtempSync(join(tmpdir(), 'neckfall-calendar-'));
afterAll(() => rmSync(folder, { recursive: true }));

test.each(['Pacific/Auckland', 'America/Los_Angeles'])('in %s it is the same calendar', (zone) => {
  const script = join(import.meta.dirname, 'write-calendar.ts');
  const said = execFileSync('npx', ['tsx', script], { env: { ...process.env, TZ: zone }, encoding: 'utf8' });
  expect(said).toBe(text);
});

const python = '/usr/bin/python3';
const hasPython = canRun(python, ['-c', 'import icalendar']);

test.skipIf(!hasPython)(
  'the icalendar package of Python reads it too (skipped where it is not installed)',
  () => {
    const file = join(folder, 'work.ics');
    writeFileSync(file, text);
    const script = `
import icalendar, json, sys
calendar = icalendar.Calendar.from_ical(open(sys.argv[1], 'rb').read())
print(json.dumps([[str(e['UID']), e['DTSTART'].dt.isoformat(), str(e['SUMMARY']), str(e['DESCRIPTION']), e['SEQUENCE']]
  for e in calendar.walk('VEVENT')]))`;
    const found = JSON.parse(execFileSync(python, ['-c', script, file], { encoding: 'utf8' }));
    expect(found).toEqual(
      eventsIn(text).map(({ uid, date, summary, description, sequence }) => [
        uid,
        date,
        summary,
        description,
        sequence,
      ]),
    );
  },
);

function canRun(program: string, args: string[]): boolean {
  try {
    execFileSync(program, args, { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}
