import { atlasEntries, dayLengthClasses, leadingEntry, openSite, startMethods } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { packEntries, perPoint, unpackLead } from '../../src/worker/atlas-pack.ts';
import { temperate } from './a-site.ts';

const from = 20_819;

test('entries come out as they went in, so that a map leads with what the engine does', () => {
  const { climate, practice } = temperate;
  const entries = atlasEntries(openSite({ climate, years: 3, seed: 1, practice }), from);
  const packed = packEntries(entries, from);
  expect(packed).toHaveLength(perPoint);
  const back = entries.map((entry) => unpackLead(packed, from, entry));
  entries.forEach((entry, at) => {
    const { goodShare, bulbDiameterMm, neckFallDay, worth, ...rest } = entry;
    expect(back[at]).toMatchObject(rest);
    expect(back[at].goodShare).toBeCloseTo(goodShare, 5);
    expect(back[at].worth).toBeCloseTo(worth, 5);
    if (bulbDiameterMm === null) expect(back[at].bulbDiameterMm).toBeNull();
    else expect(back[at].bulbDiameterMm).toBeCloseTo(bulbDiameterMm, 3);
    if (neckFallDay === null) expect(back[at].neckFallDay).toBeNull();
    else expect(back[at].neckFallDay).toBeCloseTo(neckFallDay, 3);
  });
  for (const oneClass of [null, ...dayLengthClasses]) {
    for (const start of [null, ...startMethods]) {
      const among = { class: oneClass, start };
      const lead = unpackLead(packed, from, among);
      expect(lead).toEqual(leadingEntry(back, among));
      const { type, start: way } = leadingEntry(entries, among);
      expect(lead).toMatchObject({ type, start: way });
    }
  }
});
