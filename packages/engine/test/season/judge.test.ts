import { describe, expect, test } from 'vitest';
import { bulbDiameterMm, bulbMassG, verdicts } from '../../src/plant/index.ts';
import { enoughDryG, judge, openSite, outcomeOf, smallBulbG } from '../../src/season/index.ts';
import { emptyOutcome, type Outcome, stage } from '../../src/season/outcome.ts';
import { climateOf } from '../weather/climates.ts';

describe('what counts as a small bulb', () => {
  // Common practice, no source.
  test('at 40 plants per m² is one under 55 mm, of tropical reds under 38 mm', () => {
    expect(bulbDiameterMm(smallBulbG('northern-long', 40))).toBeCloseTo(55, 9);
    expect(bulbDiameterMm(smallBulbG('tropical-short', 40))).toBeCloseTo(38, 9);
  });

  test('goes with the room: larger where plants stand wide, pickling size where they stand close', () => {
    // Pickling onions of 25–45 mm come from about 625 per m² (McGeary & Morgans 1985).
    const mm = (density: number) => bulbDiameterMm(smallBulbG('northern-long', density));
    expect(mm(15)).toBeGreaterThan(58);
    expect(mm(160)).toBeLessThan(45);
    expect(mm(625)).toBeLessThan(30);
  });
});

test('bulb mass goes as 1 / (25 + plants per m²) (Mead 1970 and Rogers: 12–36 in seven fields)', () => {
  expect(smallBulbG('short', 15) / smallBulbG('short', 40)).toBeCloseTo(65 / 40, 12);
  expect(smallBulbG('short', 105) / smallBulbG('short', 40)).toBeCloseTo(65 / 130, 12);
});

describe('one season is judged by the worst that came of it', () => {
  const plan = { type: 'northern-long', densityPerM2: 40 } as const;
  const dryShare = 0.115;
  const good: Partial<Outcome> = { reached: stage.fallen, bulbDryG: 12, aliveShare: 0.9, boltedShare: 0.1 };
  const verdictOf = (other: Partial<Outcome>, referenceDryG = 13) =>
    judge({ ...emptyOutcome(), ...good, ...other }, plan, dryShare, referenceDryG);

  test.each([
    ['good', {}],
    ['winter-killed', { aliveShare: 0.49 }],
    ['good', { aliveShare: 0.51 }],
    ['bolts', { boltedShare: 0.26 }],
    ['good', { boltedShare: 0.25 }],
    ['no-bulb', { reached: stage.planted, bulbDryG: 0 }],
    ['not-ripe', { reached: stage.onset }],
    ['not-ripe', { reverted: true }],
    ['small', { bulbDryG: 0.99 * bulbMassG(55) * dryShare }],
    ['winter-killed', { aliveShare: 0.1, boltedShare: 0.9, reached: stage.planted }],
    ['bolts', { boltedShare: 0.9, reached: stage.planted }],
  ] as const)('%s: %o', (verdict, other) => expect(verdictOf(other)).toBe(verdict));

  test('small against the best of the place, up to a full bulb and no farther', () => {
    const bulbDryG = 1.02 * bulbMassG(55) * dryShare;
    expect(verdictOf({ bulbDryG }, 13)).toBe('good');
    const grape = { type: 'short', densityPerM2: 160 } as const;
    const verdictAt = (dryG: number, best: number) =>
      judge({ ...emptyOutcome(), ...good, bulbDryG: dryG }, grape, 0.1, best);
    expect(verdictAt(5.9, 10)).toBe('small');
    expect(verdictAt(6.1, 10)).toBe('good');
    expect(verdictAt(7.9, 40)).toBe('good');
  });

  test('tropical reds of the rains are a crop at home, and small in the north', () => {
    const red = { type: 'tropical-short', densityPerM2: 40 } as const;
    const verdictAt = (latitudeDeg: number) => {
      const site = openSite({
        climate: climateOf({ latitudeDeg, mean: Array(12).fill(20) }),
        years: 1,
        seed: 1,
      });
      const most = Math.min(16, enoughDryG(site, 'tropical-short'));
      return judge({ ...emptyOutcome(), ...good, bulbDryG: bulbMassG(45) * 0.12 }, red, 0.12, most);
    };
    expect(verdictAt(15)).toBe('good');
    expect(verdictAt(52)).toBe('small');
  });
});

describe('many seasons', () => {
  const shares = (of: Partial<Record<(typeof verdicts)[number], number>>) =>
    ({ ...Object.fromEntries(verdicts.map((verdict) => [verdict, 0])), ...of }) as Parameters<
      typeof outcomeOf
    >[0];

  test.each([
    [{ good: 0.5, small: 0.5 }, 'good', false],
    [{ good: 0.4, small: 0.35, bolts: 0.25 }, 'small', true],
    [{ good: 0.3, small: 0.4, bolts: 0.3 }, 'small', false],
    [{ 'no-bulb': 1 }, 'no-bulb', false],
  ] as const)('%o', (of, outcome, gamble) => expect(outcomeOf(shares(of))).toEqual({ outcome, gamble }));
});
