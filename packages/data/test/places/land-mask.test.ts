import { describe, expect, test } from 'vitest';
import { isLand, townAt } from '../../src/places/index.ts';
import { loadGazetteer, loadLandMask } from '../../src/places/node.ts';

const mask = loadLandMask();

describe('the land mask', () => {
  test('contains every town of the gazetteer from 60° S to 72° N', () => {
    const gazetteer = loadGazetteer();
    const wet = Array.from({ length: gazetteer.townCount }, (_, town) => townAt(gazetteer, town)).filter(
      ({ latitudeDeg, longitudeDeg }) =>
        latitudeDeg >= -60 && latitudeDeg <= 72 && !isLand(mask, latitudeDeg, longitudeDeg),
    );
    expect(wet).toEqual([]);
  });

  // Places by common knowledge of the map, to about a tenth of a degree.
  test.each([
    ['Jersey', 49.21, -2.13],
    ['Malta', 35.9, 14.43],
    ['Mauritius', -20.3, 57.55],
    ['Tristan da Cunha', -37.1, -12.28],
    ['Pitcairn', -25.07, -130.1],
    ['Lord Howe', -31.55, 159.08],
    ['Chatham', -43.95, -176.55],
    ['Corvo', 39.7, -31.1],
    ['the Sahara', 23, 5],
    ['central Australia', -25, 135],
    ['Lake Superior, as a lake', 47.7, -87.5],
    ['Lake Victoria, as a lake', -1, 33],
  ])('has %s as land', (_, latitudeDeg, longitudeDeg) => {
    expect(isLand(mask, latitudeDeg, longitudeDeg)).toBe(true);
  });

  test.each([
    ['the Gulf of Guinea', 0, 0],
    ['the North Atlantic', 45, -40],
    ['the Pacific', 0, -140],
    ['the Southern Ocean', -55, 90],
    ['the English Channel', 50.2, -1],
    ['the Bay of Biscay', 45.5, -5],
    ['the Tasman Sea', -38, 162],
    ['the Caspian', 42, 51],
    ['the North Pole', 90, 0],
    ['Antarctica, beyond the mask', -80, 0],
  ])('has %s as sea', (_, latitudeDeg, longitudeDeg) => {
    expect(isLand(mask, latitudeDeg, longitudeDeg)).toBe(false);
  });

  test('goes on across the date line', () => {
    for (const turn of [-360, 0, 360]) {
      expect(isLand(mask, 67, 179.9 + turn), 'Chukotka, west of 180°').toBe(true);
      expect(isLand(mask, 67, -179.9 + turn), 'Chukotka, east of 180°').toBe(true);
      expect(isLand(mask, 67, 180 + turn)).toBe(true);
      expect(isLand(mask, 0, 180 + turn)).toBe(false);
    }
  });

  test('calls three tenths of the rows land', () => {
    // Land is 29 % of the Earth and, without Antarctica, 26 %; touched cells and the wide northern rows add some.
    let land = 0;
    for (let latitude = -59.5; latitude < 84; latitude++) {
      for (let longitude = -179.5; longitude < 180; longitude++)
        land += isLand(mask, latitude, longitude) ? 1 : 0;
    }
    expect(land / (144 * 360)).toBeGreaterThan(0.27);
    expect(land / (144 * 360)).toBeLessThan(0.33);
  });

  test.each([
    [90.1, 0],
    [Number.NaN, 0],
    [0, Number.NaN],
  ])('refuses the point %s, %s', (latitudeDeg, longitudeDeg) => {
    expect(() => isLand(mask, latitudeDeg, longitudeDeg)).toThrow(`point ${latitudeDeg}, ${longitudeDeg}`);
  });
});
