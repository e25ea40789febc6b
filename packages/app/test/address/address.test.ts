import {
  dayLengthClasses,
  gardenRanges,
  likes,
  mostSymptoms,
  passedOver,
  questionAnswers,
  questions,
  type Said,
  seedAges,
  soilTextures,
  startMethods,
  storePlaces,
  symptoms,
} from '@neckfall/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nothingAsked, pageNames, readAddress, writeAddress } from '../../src/address/address.ts';
import type { Asked } from '../../src/address/address-form.ts';
import { readNumber } from '../../src/address/form-kinds.ts';
import { type TeachInAddress, teachForms } from '../../src/address/teach-form.ts';

const optional = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null });
const name = fc
  .string({ minLength: 1, maxLength: 60, unit: 'grapheme' })
  .map((text) =>
    text
      .replace(/[\p{C}\p{Zl}\p{Zp}]/gu, ' ')
      .replace(/\s+/g, ' ')
      .trim(),
  )
  .filter((text) => text !== '' && text.length <= 120);
const day = fc.integer({ min: -7305, max: 44_194 });
const degrees = (most: number) => fc.integer({ min: -most * 1e4, max: most * 1e4 }).map((d) => d / 1e4);

const teach = Object.fromEntries(
  Object.keys(teachForms).map((name) => [name, optional(fc.string({ maxLength: 300, unit: 'grapheme' }))]),
) as Record<keyof TeachInAddress, fc.Arbitrary<string | null>>;

const asked: fc.Arbitrary<Asked> = fc.record({
  at: optional(fc.record({ latitudeDeg: degrees(90), longitudeDeg: degrees(180) })),
  name: optional(name),
  elevation: optional(fc.integer({ min: -430, max: 6000 })),
  sun: optional(fc.integer({ min: 0, max: 240 }).map((tenths) => tenths / 10)),
  hollow: optional(fc.constant(true as const)),
  cover: optional(fc.constantFrom('fleece', 'tunnel')),
  water: optional(fc.constant('rain' as const)),
  soil: optional(fc.constantFrom(...soilTextures)),
  class: optional(fc.constantFrom(...dayLengthClasses)),
  cultivar: optional(name),
  packetHours: optional(fc.integer({ min: 800, max: 2000 }).map((hundredths) => hundredths / 100)),
  packetDays: optional(fc.integer({ min: 30, max: 400 })),
  start: optional(fc.constantFrom(...startMethods)),
  date: optional(day),
  plantOut: optional(day),
  rowDistance: optional(fc.integer({ min: 100, max: 600 }).map((mm) => mm / 10)),
  plantDistance: optional(fc.integer({ min: 25, max: 300 }).map((mm) => mm / 10)),
  perStation: optional(fc.integer({ min: 10, max: 120 }).map((tenths) => tenths / 10)),
  seedAge: optional(fc.constantFrom(...seedAges)),
  plants: optional(fc.integer({ min: 1, max: 1_000_000 })),
  setSize: optional(fc.integer({ min: 50, max: 400 }).map((tenths) => tenths / 10)),
  setStore: optional(fc.constant('warm' as const)),
  nurseryTemp: optional(fc.integer({ min: 20, max: 350 }).map((tenths) => tenths / 10)),
  lampHours: optional(fc.integer({ min: 0, max: 240 }).map((tenths) => tenths / 10)),
  have: optional(
    fc.array(
      name.filter((text) => !text.includes(',')),
      { minLength: 1, maxLength: 5 },
    ),
  ),
  holds: optional(fc.constantFrom('seed', 'plants', 'sets')),
  skin: optional(fc.constantFrom('yellow', 'red', 'white', 'brown', 'pink')),
  onlyClass: optional(fc.constantFrom(...dayLengthClasses)),
  onlyStart: optional(fc.constantFrom(...startMethods)),
  colour: optional(fc.constantFrom('yellow', 'red', 'white', 'brown', 'pink')),
  keeps: optional(fc.integer({ min: 1, max: 12 })),
  mild: optional(fc.constant(true as const)),
  packet: optional(fc.constant(true as const)),
  planting: optional(fc.string({ minLength: 1, maxLength: 300, unit: 'grapheme' })),
  bed: optional(fc.string({ minLength: 1, maxLength: 300, unit: 'grapheme' })),
  beside: optional(
    fc.array(
      fc.record({
        start: fc.constantFrom(...startMethods),
        name: name.filter((text) => !text.includes(',')),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  ),
  people: optional(fc.integer({ min: 1, max: 100 })),
  gramsPerWeek: optional(fc.integer({ min: 1, max: 1_000_000 })),
  store: optional(
    fc.oneof(
      fc.constantFrom(...storePlaces),
      fc.record({
        tempC: fc.integer({ min: -100, max: 400 }).map((tenths) => tenths / 10),
        humidityPct: fc.integer({ min: 0, max: 100 }),
      }),
    ),
  ),
  ...teach,
  likes: optional(fc.subarray([...likes], { minLength: 1 })),
  symptoms: optional(fc.uniqueArray(fc.constantFrom(...symptoms), { minLength: 1, maxLength: mostSymptoms })),
  answers: optional(
    fc
      .subarray([...questions], { minLength: 1 })
      .chain((put) =>
        fc.record(
          Object.fromEntries(
            put.map((question) => [question, fc.constantFrom(passedOver, ...questionAnswers[question])]),
          ),
        ),
      ) as fc.Arbitrary<Said>,
  ),
  isAbout: optional(fc.constant(true as const)),
  noticed: optional(day),
  taken: optional(
    fc.record({
      class: optional(fc.constantFrom(...dayLengthClasses)),
      start: fc.constantFrom(...startMethods),
      date: day,
    }),
  ),
  today: optional(day),
});

describe('an address', () => {
  test('gives back what was written into it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pageNames), asked, (page, wanted) => {
        expect(readAddress(writeAddress(page, wanted))).toEqual({ page, asked: wanted, misread: [] });
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  test('is read without a fault whatever stands in it, and is the same when written and read again', () => {
    const junk = fc.oneof(
      fc.string({ maxLength: 200 }),
      fc
        .tuple(
          fc.constantFrom('at', 'name', 'date', 'sun', 'have', 'saw', 'answers', 'taken'),
          fc.string({ maxLength: 80 }),
        )
        .map(([key, value]) => `#/when?${key}=${value}`),
    );
    fc.assert(
      fc.property(junk, (hash) => {
        const { page, asked: read } = readAddress(hash);
        const again = readAddress(writeAddress(page, read));
        expect(again.asked).toEqual(read);
        expect(again.misread).toEqual([]);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  test('opens the Where page with nothing asked when it is empty or unknown', () => {
    for (const hash of ['', '#', '#/', '#/nowhere', '#/__proto__', '#/constructor?toString=1']) {
      expect(readAddress(hash)).toEqual({ page: 'where', asked: nothingAsked, misread: [] });
    }
  });

  test.each([
    ['at', '91,0'],
    ['at', '45'],
    ['at', '45,4,3'],
    ['at', '4e1,NaN'],
    ['elevation', '99999'],
    ['sun', '25'],
    ['sun', 'Infinity'],
    ['date', '2027-02-30'],
    ['date', '03-25'],
    ['class', 'medium'],
    ['class', '__proto__'],
    ['start', 'bulbs'],
    ['soil', 'rock'],
    ['saw', 'flowered,blue'],
    ['saw', '__proto__'],
    ['saw', ''],
    ['answers', 'watering~sometimes'],
    ['answers', 'constructor~often'],
    ['answers', 'watering'],
    ['noticed', 'January'],
    ['taken', 'long~sets'],
    ['taken', 'medium~sets~2027-03-25'],
    ['taken', 'long~bulbs~2027-03-25'],
    ['taken', '~sets~2027-02-30'],
    ['name', ' \u202e '],
    ['name', 'x'.repeat(121)],
  ])('leaves out %s=%s and names it', (key, value) => {
    const { asked: read, misread } = readAddress(`#/season?${key}=${encodeURIComponent(value)}`);
    expect(read).toEqual(nothingAsked);
    expect(misread).toEqual([expect.objectContaining({ key, value: value.slice(0, 80) })]);
  });

  test.each([
    ['packetHours', 'packet-hours', gardenRanges.packetHours],
    ['packetDays', 'packet-days', gardenRanges.packetDays],
    ['setSize', 'set-size', gardenRanges.setSizeMm],
    ['sun', 'sun', gardenRanges.sunHours],
    ['elevation', 'elevation', gardenRanges.elevationM],
  ] as const)(
    'takes %s from end to end of what a garden file may hold, and no further',
    (name, key, range) => {
      for (const value of range) expect(readAddress(`#/which?${key}=${value}`).asked[name]).toBe(value);
      for (const value of [range[0] - 1, range[1] + 1])
        expect(readAddress(`#/which?${key}=${value}`).misread).toEqual([
          { key, value: String(value), expects: 'number' },
        ]);
    },
  );

  test('takes marks that turn or hide text out of names', () => {
    const { asked: read } = readAddress(
      `#/where?name=${encodeURIComponent('Pen\u202ecarreg\u0000 \u200bBank')}`,
    );
    expect(read.name).toBe('Pen carreg Bank');
  });
});

test('what was seen is said once each, and no more of it than tells anything', () => {
  const twice = readAddress('#/why?saw=split,flowered,split').asked.symptoms;
  expect(twice).toEqual(['split', 'flowered']);
  const all = readAddress(`#/why?saw=${symptoms.join(',')}`).asked.symptoms;
  expect(all).toEqual(symptoms.slice(0, mostSymptoms));
});

describe('a number typed', () => {
  test.each([
    ['45.76', 45.76],
    ['45,76', 45.76],
    ['−3.13', -3.13],
    [' 12 ', 12],
    ['', null],
    ['1e3', null],
    ['0x10', null],
    ['12 m', null],
    ['--1', null],
  ])('"%s" is read as %s', (text, value) => {
    expect(readNumber(text)).toBe(value);
  });
});

test('the id of a planting is written and read as it is kept', () => {
  for (const planting of ['q', 'q\u200b', ' q  q ', 'a+b&c=d#e%20', '\0', 'q'.repeat(1000)]) {
    const hash = writeAddress('season', { ...nothingAsked, planting });
    expect(readAddress(hash).asked.planting).toBe(planting);
  }
});
