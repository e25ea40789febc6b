import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  classOfType,
  dayLengthClasses,
  dayNumber,
  openSite,
  type Packet,
  planDefaults,
  plantOfPacket,
  runnerOf,
  stage,
  typeForClass,
} from '../../packages/engine/src/index.ts';
import { climateOf, isCovered } from '../season/places.ts';

const year = 2027;
const siteAt = (latitude: number, longitude: number) =>
  openSite({ climate: climateOf(latitude, longitude), years: 3, seed: 1 });
const seattle = siteAt(47.61, -122.33);
const nairobi = siteAt(-1.29, 36.82);
const silent: Packet = { class: null, hours: null, days: null };

describe('a packet with a class alone', () => {
  test.each(dayLengthClasses)('%s is what that class holds here', (dayLengthClass) => {
    const plant = plantOfPacket(seattle, { ...silent, class: dayLengthClass }, year);
    expect(plant.type).toBe(typeForClass(seattle, dayLengthClass, 'direct-seed', dayNumber(year, 3, 21)));
    expect(plant.traits).toBeNull();
  });
});

describe('hours on a packet', () => {
  // Common practice, no source: short-day 10–12 h, intermediate 12–14 h, long-day 14–16 h.
  test.each([
    [11, 'short'],
    [13, 'intermediate'],
    [15, 'long'],
  ])('of %d say that it is %s-day', (hours, dayLengthClass) => {
    const { type } = plantOfPacket(seattle, { ...silent, hours }, year);
    expect(classOfType[type]).toBe(dayLengthClass);
  });

  test('are longer with twilight, and bulbs are induced a little before', () => {
    const [note] = plantOfPacket(seattle, { ...silent, hours: 14 }, year).notes;
    if (note.code !== 'hours-taken') throw new Error('another note');
    expect(note.photoperiodH - note.hours).toBeGreaterThan(0.3);
    expect(note.photoperiodH - note.hours).toBeLessThan(1.2);
  });

  test('that no onion of its class has are bounded, and said to be', () => {
    const { type, notes } = plantOfPacket(seattle, { ...silent, class: 'short', hours: 16 }, year);
    expect(classOfType[type]).toBe('short');
    expect(notes[0].code).toBe('hours-bounded');
  });

  test('are needed where there is no class', () => {
    expect(() => plantOfPacket(seattle, { ...silent, days: 100 }, year)).toThrow(RangeError);
  });
});

describe('days on a packet', () => {
  test('are met by the plant within three days, from the start that they count from', () => {
    for (const [site, dayLengthClass] of [
      [seattle, 'long'],
      [seattle, 'intermediate'],
      [nairobi, 'short'],
    ] as const) {
      const usual = plantOfPacket(site, { ...silent, class: dayLengthClass, days: 110 }, year).notes[1];
      if (!('modelDays' in usual)) throw new Error('nothing ripens');
      const days = Math.round(usual.modelDays) + 5;
      const { type, traits, notes } = plantOfPacket(site, { ...silent, class: dayLengthClass, days }, year);
      const [, note] = notes;
      if (note.code !== 'days-taken') throw new Error(`not taken: ${note.code}`);
      expect(traits?.ripeningFactor).toBeGreaterThan(1);
      const plan = { ...planDefaults, type, traits, start: note.start, startDay: note.startDay };
      const outcome = runnerOf(site, plan).meanSeason();
      expect(outcome.reached).toBe(stage.fallen);
      expect(Math.abs(outcome.fellOn - days)).toBeLessThanOrEqual(3);
    }
  });

  test('far from any season are bounded, and said to be', () => {
    const { traits, notes } = plantOfPacket(seattle, { ...silent, class: 'long', days: 40 }, year);
    expect(notes[1].code).toBe('days-bounded');
    expect(traits?.ripeningFactor).toBeCloseTo(0.8, 1);
  });

  test('say nothing where no onion of the kind ripens', () => {
    const { traits, notes } = plantOfPacket(nairobi, { ...silent, class: 'long', days: 100 }, year);
    expect(notes[1]).toEqual({ code: 'days-unused', days: 100 });
    expect(traits).toBeNull();
  });
});

test('whatever is printed, anywhere, gives a plant within what onions can be', () => {
  const points = fc
    .tuple(fc.integer({ min: -600, max: 720 }), fc.integer({ min: -1800, max: 1799 }))
    .map(([lat, lon]) => [lat / 10, lon / 10] as const)
    .filter(([lat, lon]) => isCovered(lat, lon));
  const packets = fc.record({
    class: fc.constantFrom(...dayLengthClasses, null),
    hours: fc.option(fc.double({ min: 8, max: 18, noNaN: true })),
    days: fc.option(fc.integer({ min: 30, max: 400 })),
  });
  fc.assert(
    fc.property(points, packets, ([lat, lon], packet) => {
      fc.pre(packet.class !== null || packet.hours !== null);
      const { type, traits, notes } = plantOfPacket(siteAt(lat, lon), packet, year);
      if (packet.class !== null) expect(classOfType[type]).toBe(packet.class);
      const factor = traits?.ripeningFactor ?? 1;
      expect(factor).toBeGreaterThanOrEqual(0.8);
      expect(factor).toBeLessThanOrEqual(1.2);
      const criticalH = traits?.criticalPhotoperiodH ?? 12;
      expect(criticalH).toBeGreaterThan(10);
      expect(criticalH).toBeLessThanOrEqual(17);
      for (const note of notes) {
        if ('startDay' in note) expect(Math.abs(note.startDay - dayNumber(year, 7, 1))).toBeLessThan(400);
      }
      expect(notes.length).toBe(1 + (packet.days === null ? 0 : 1));
    }),
    { numRuns: 40, seed: 20270503 },
  );
});
