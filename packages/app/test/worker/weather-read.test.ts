import { gzipSync } from 'node:zlib';
import { noCorrections, recordFields } from '@neckfall/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { recordedAnswer } from '../../../data/test/live/recorded-answer.ts';
import type { Work } from '../../src/worker/protocol.ts';
import { weatherAnswer } from '../../src/worker/weather-answer.ts';
import { type WeatherReadReply, weatherRead } from '../../src/worker/weather-read.ts';

const place = { latitudeDeg: 52.08, longitudeDeg: -3.13, utcOffsetH: 0 };
const work: Work<{ file: string }> = { part: () => {}, pause: async () => {}, isCancelled: () => false };
const read = (...files: File[]) => weatherRead({ files, corrections: noCorrections, place }, work);
const fileOf = (name: string, bytes: Uint8Array) => new File([new Uint8Array(bytes)], name);

const day = (at: number) => new Date(Date.UTC(2027, 2, 1 + at)).toISOString().slice(0, 10);
const german = (at: number) => day(at).split('-').reverse().join('.');
const days = Array.from({ length: 40 }, (_, at) => at);

/** Whole files of several kinds, small enough to be broken often. */
const whole: Record<string, Uint8Array> = {
  'own.csv': Buffer.from(
    `date,temp_min_c,temp_max_c,rain_mm\n${days.map((at) => `${day(at)},${at / 10},${8 + (at % 9)},${at % 4}`).join('\n')}\n`,
  ),
  'station.csv': Buffer.from(
    `Zeit;Außen Temperatur(°C);Regen Heute(mm)\r\n${days
      .flatMap((at) =>
        [6, 12, 18].map((hour) => `${german(at)} ${hour}:00;${4 + (hour % 9)},5;${hour / 6},0`),
      )
      .join('\r\n')}\r\n`,
    'latin1',
  ),
  'service.json': Buffer.from(JSON.stringify(recordedAnswer(20_600))),
  'flat.csv': Buffer.from(
    `"STATION","DATE","PRCP","TMAX","TMIN"\n${days.map((at) => `"UKX0000","${day(at)}","  ${at % 5}.0","${60 + at}","${30 + at}"`).join('\n')}\n`,
  ),
};
whole['packed.csv.gz'] = gzipSync(whole['own.csv']);
whole['station.csv.gz'] = gzipSync(whole['station.csv']);

test('whole files of each kind are found', async () => {
  for (const [name, bytes] of Object.entries(whole)) {
    const reply = await read(fileOf(name, bytes));
    expect({ name, ok: reply.ok }).toEqual({ name, ok: true });
  }
});

type Change = { at: number; how: 'flip' | 'cut' | 'drop' | 'double' | 'put'; byte: number };

/** The bytes with something done to them at a place, 0…1 of their length. */
function changed(bytes: Uint8Array, { at, how, byte }: Change): Uint8Array {
  const place = Math.floor(at * bytes.length);
  const [before, after] = [bytes.slice(0, place), bytes.slice(place)];
  const joined = (...parts: Uint8Array[]) => Uint8Array.from(parts.flatMap((part) => [...part]));
  switch (how) {
    case 'flip':
      return joined(before, Uint8Array.of((after[0] ?? 0) ^ byte), after.slice(1));
    case 'cut':
      return before;
    case 'drop':
      return joined(before, after.slice(1 + byte));
    case 'double':
      return joined(before, after.slice(0, byte * 8), after);
    case 'put':
      return joined(before, Uint8Array.of(byte), after);
  }
}

/** What a page may be given: a whole record, or why there is none. */
function expectWhole(reply: WeatherReadReply): void {
  if (!reply.ok) {
    expect(reply.refusal.code).toMatch(/^[a-z-]+$/);
    expect(reply.refusal.file).not.toBe('');
    return;
  }
  const { record } = reply.found;
  for (const field of recordFields) {
    expect([record[field].length, record.known[field].length]).toEqual([record.days, record.days]);
    for (let at = 0; at < record.days; at++)
      if (record.known[field][at] === 1 && !Number.isFinite(record[field][at]))
        throw new Error(`${field} of day ${at} is ${record[field][at]}`);
  }
}

const change = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  how: fc.constantFrom('flip', 'cut', 'drop', 'double', 'put' as const),
  byte: fc.integer({ min: 1, max: 255 }),
});

test('of 2,000 broken files each is whole or refused in a word, and nothing is thrown', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...Object.keys(whole)),
      fc.array(change, { minLength: 1, maxLength: 4 }),
      async (name, changes) => {
        expectWhole(await read(fileOf(name, changes.reduce(changed, whole[name]))));
      },
    ),
    { numRuns: 2000, seed: 20271128 },
  );
});

test('one broken file among several leaves nothing of the others', async () => {
  const reply = await read(
    fileOf('own.csv', whole['own.csv']),
    fileOf('cut.csv.gz', whole['packed.csv.gz'].slice(0, 60)),
  );
  expect(reply).toEqual({ ok: false, refusal: { file: 'cut.csv.gz', code: 'damaged' } });
});

test('leaves off between files where the reader no longer wants them', async () => {
  const told: string[] = [];
  const calledOff: Work<{ file: string }> = {
    ...work,
    part: ({ file }) => told.push(file),
    pause: async () => {
      if (told.length === 2) throw new Error('called off');
    },
  };
  const files = ['a.csv', 'b.csv', 'c.csv'].map((name) => fileOf(name, whole['own.csv']));
  await expect(weatherRead({ files, corrections: noCorrections, place }, calledOff)).rejects.toThrow(
    'called off',
  );
  expect(told).toEqual(['a.csv', 'b.csv']);
});

test('of 1,000 broken answers of a service each is whole or refused', () => {
  const today = 20_600;
  const text = JSON.stringify(recordedAnswer(today));
  const asked = { host: 'weather.example', point: { latitudeDeg: 52.1, longitudeDeg: -3.1 }, today };
  expect(weatherAnswer({ ...asked, text }).ok).toBe(true);
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
      const broken = new TextDecoder().decode(changes.reduce(changed, new TextEncoder().encode(text)));
      const reply = weatherAnswer({ ...asked, text: broken });
      if (!reply.ok) expect(reply.refusal.code).toMatch(/^(not-weather|other-(place|units|days))$/);
    }),
    { numRuns: 1000, seed: 20271128 },
  );
});
