import { gzipSync } from 'node:zlib';
import { openWeatherFile } from '@neckfall/data';
import {
  comingOf,
  joinWeather,
  noCorrections,
  readWeather,
  recordFields,
  recordOfGarden,
  type WeatherReading,
} from '@neckfall/engine';
import fc from 'fast-check';
import { zipSync } from 'fflate';
import { attack } from './attack.ts';
import { weatherFixtures } from './weather-fixtures.ts';

/** What stands in files where it should not. */
const pieces = [
  '',
  ',',
  ';',
  '"',
  '\n',
  '\r',
  '\t',
  '\0',
  '-',
  '{',
  ']',
  '9'.repeat(400),
  '1e309',
  '-9999',
  'NaN',
  '٣',
  '\uFFFD',
  ' '.repeat(300),
  '2026-02-30',
  '31/31/31',
  '24:00',
  '°F',
  '__proto__',
  '2201',
  '-0',
];

/** A change at a place of a text, as a share of it. */
const place = fc.double({ min: 0, max: 1, noNaN: true });
const change = fc.oneof(
  fc.record({
    kind: fc.constant('piece' as const),
    at: place,
    cut: fc.nat(60),
    piece: fc.constantFrom(...pieces),
  }),
  fc.record({ kind: fc.constant('line' as const), at: place, to: place, drop: fc.boolean() }),
  fc.record({ kind: fc.constant('cell' as const), at: place, to: place }),
  fc.record({ kind: fc.constant('end' as const), at: place }),
  fc.record({ kind: fc.constant('swell' as const), times: fc.integer({ min: 2, max: 40 }) }),
);
type Change = typeof change extends fc.Arbitrary<infer One> ? One : never;

function changed(text: string, one: Change): string {
  if (one.kind === 'end') return text.slice(0, Math.round(one.at * text.length));
  if (one.kind === 'swell') return text.length > 20_000 ? text : text.repeat(one.times);
  if (one.kind === 'piece') {
    const at = Math.round(one.at * text.length);
    return text.slice(0, at) + one.piece + text.slice(at + one.cut);
  }
  const mark = one.kind === 'line' ? '\n' : ',';
  const parts = text.split(mark);
  const from = Math.floor(one.at * (parts.length - 1));
  const [taken = ''] = parts.splice(from, 1);
  if (!('drop' in one) || !one.drop) parts.splice(Math.floor(one.to * parts.length), 0, taken);
  return parts.join(mark);
}

const text = fc
  .tuple(fc.constantFrom(...weatherFixtures), fc.array(change, { maxLength: 5 }))
  .map(([fixture, changes]) => changes.reduce(changed, fixture));

/** How a text comes to stand in bytes, rightly or not. */
const ways = {
  utf8: (given: string) => Buffer.from(given),
  marked: (given: string) => Buffer.from(`\uFEFF${given}`),
  utf16: (given: string) => Buffer.from(`\uFEFF${given}`, 'utf16le'),
  swapped: (given: string) => Buffer.from(`\uFEFF${given}`, 'utf16le').swap16(),
  latin1: (given: string) => Buffer.from(given, 'latin1'),
  gzip: (given: string) => gzipSync(given),
  zip: (given: string) =>
    Buffer.from(zipSync({ 'notes.txt': Buffer.from('About'), 'a.txt': Buffer.from(given) })),
};
const bytes = fc
  .tuple(
    text,
    fc.constantFrom(...Object.values(ways)),
    fc.array(fc.tuple(place, fc.nat(255)), { maxLength: 3 }),
    fc.oneof({ weight: 5, arbitrary: fc.constant(1) }, place),
  )
  .map(([given, way, changes, end]) => {
    const packed = Uint8Array.from(way(given));
    for (const [at, byte] of changes) packed[Math.floor(at * (packed.length - 1))] = byte;
    return packed.subarray(0, Math.round(end * packed.length));
  });

/** What is kept of the place before a file comes. */
const kept = (() => {
  const result = readWeather([{ file: 'kept', text: weatherFixtures[0], encoding: 'utf-8' }], noCorrections, {
    utcOffsetH: 0,
  });
  const coming = result.ok ? comingOf(result.reading, 'w', 'p') : null;
  return coming && joinWeather(null, coming, 'ask').weather;
})();

/** A megabyte may take so long, and so may what is smaller, ms of the processor: others may need it too. */
const mostMs = 2000;

export const ofWeatherFiles = attack(
  'weather files of every format: bytes, cells, lines and encodings changed, packed and cut off',
  10,
  fc.array(bytes, { minLength: 1, maxLength: 2 }),
  (files) => {
    const from = process.cpuUsage();
    const wrong = misreading(files);
    const size = files.reduce((sum, { length }) => sum + length, 0);
    const tookMs = process.cpuUsage(from).user / 1000;
    return wrong ?? (tookMs > mostMs * Math.max(1, size / 1e6) ? `it took ${tookMs} ms` : null);
  },
);

function misreading(files: readonly Uint8Array[]): string | null {
  const texts = [];
  for (const [at, file] of files.entries()) {
    const opened = openWeatherFile(`file-${at}`, file);
    if (!opened.ok) return null;
    texts.push(...opened.texts);
  }
  const result = readWeather(texts, noCorrections, { utcOffsetH: 0 });
  if (result.ok) return wrongIn(result.reading);
  const { expected, line } = result.issue;
  if (expected === '' || /[\r\n]/.test(expected)) return 'refused without a reason in one line';
  return line === null || line >= 1 ? null : 'an issue on no line';
}

function wrongIn(reading: WeatherReading): string | null {
  const { record, totals } = reading;
  if (!(record.days >= 1 && record.days < 200_000)) return `a record of ${record.days} days`;
  for (const field of recordFields) if (!record[field].every(Number.isFinite)) return `${field} is no number`;
  if (recordFields.every((field) => totals.known[field] + totals.missing[field] !== record.days))
    return 'days that are neither known nor missing';
  const coming = comingOf(reading, 'n', 'p');
  if (coming === null || kept === null) return null;
  const before = JSON.stringify(kept);
  const { weather, question } = joinWeather(kept, coming, 'ask');
  if (JSON.stringify(kept) !== before) return 'what was kept is changed';
  if (question !== null) return weather === null ? null : 'half an import';
  return weather !== null && recordOfGarden(weather).days >= kept.tempMaxC.length - 1
    ? null
    : 'what was kept is lost';
}
