import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Cause } from '../../src/why/causes.ts';
import { type Addition, type Cure, creditsOf } from '../../src/why/credit.ts';
import type { SeasonFacts } from '../../src/why/season-facts.ts';
import { noneUntold, seenShare } from '../../src/why/sight.ts';
import { symptoms } from '../../src/why/symptoms.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const anySeason = fc.record({
  weight: fc.constant(0.25),
  emergedShare: share,
  killedShare: share,
  liftedShare: share,
  boltedShare: share,
  boltedIfProne: share,
  hasBulb: fc.boolean(),
  isRipe: fc.boolean(),
  bulbMm: fc.double({ min: 0, max: 100, noNaN: true }),
  bulbDryG: fc.double({ min: 0, max: 30, noNaN: true }),
  smallDryG: fc.constant(8),
  hopedDryG: fc.double({ min: 0, max: 30, noNaN: true }),
  leavesAtOnset: fc.double({ min: 0, max: 15, noNaN: true }),
  thirstyDays: fc.double({ min: 0, max: 90, noNaN: true }),
  stored: fc.constant(null),
}) satisfies fc.Arbitrary<SeasonFacts>;
const seasons = fc.array(anySeason, { minLength: 4, maxLength: 4 });
const told = fc.uniqueArray(fc.constantFrom(...symptoms), { minLength: 1, maxLength: 4 });
const anyCure = fc.record({
  cause: fc.constantFrom('thirst' as const, 'shade' as const, 'winter-cold' as const),
  prior: share,
  seasons,
}) satisfies fc.Arbitrary<Cure>;
const anyAddition: fc.Arbitrary<Addition> = fc.record({
  cause: fc.constantFrom<Cause | null>('white-rot', 'thrips', null),
  prior: share,
  shows: fc.dictionary(fc.constantFrom(...symptoms), share),
});
const settings = { seed: 16, numRuns: 200 };
const sum = (credits: Iterable<number>) => [...credits].reduce((a, b) => a + b, 0);

describe('credit for what was seen', () => {
  test('is all given out, none of it twice: it makes the joint probability of what was told', () => {
    fc.assert(
      fc.property(told, seasons, fc.array(anyCure), fc.array(anyAddition), (of, asTold, cures, additions) => {
        const joint = (shows: Partial<Record<string, number>>, prior: number) =>
          prior *
          sum(
            asTold.map(
              (season) =>
                season.weight *
                noneUntold(of, season) *
                of.reduce(
                  (all, one) => all * (1 - (1 - seenShare(one, season)) * (1 - (shows[one] ?? 0))),
                  1,
                ),
            ),
          );
        const whole =
          joint({}, 1) +
          sum(
            additions.map((one) => ('shows' in one ? joint(one.shows, one.prior) - joint({}, one.prior) : 0)),
          );
        const credits = creditsOf(of, asTold, cures, additions);
        expect(sum(credits.values())).toBeCloseTo(whole, 7);
        for (const credit of credits.values()) expect(credit).toBeGreaterThanOrEqual(0);
      }),
      settings,
    );
  });

  test('a cause that takes nothing away gets none, one that takes all away gets what its prior allows', () => {
    fc.assert(
      fc.property(told, seasons, share, (of, asTold, prior) => {
        const same: Cure = { cause: 'thirst', prior, seasons: asTold };
        expect(creditsOf(of, asTold, [same], []).get('thirst')).toBe(0);
      }),
      settings,
    );
    const flowering = [{ ...season, boltedShare: 1, boltedIfProne: 1 }];
    const cured: Cure = { cause: 'cold-on-large-plants', prior: 1, seasons: [season] };
    const credits = creditsOf(['flowered'], flowering, [cured], []);
    expect(credits.get('cold-on-large-plants')! / sum(credits.values())).toBeGreaterThan(0.99);
  });

  test('of two things seen with two causes each cause gets its own', () => {
    const small = [{ ...season, bulbDryG: 2, bulbMm: 30 }];
    const cured: Cure = { cause: 'shade', prior: 1, seasons: [season] };
    const rot: Addition = { cause: 'white-rot', prior: 0.05, shows: { 'white-fluff': 0.95 } };
    const credits = creditsOf(['small', 'white-fluff'], small, [cured], [rot]);
    const all = sum(credits.values());
    expect(credits.get('shade')! / all).toBeGreaterThan(0.4);
    expect(credits.get('white-rot')! / all).toBeGreaterThan(0.4);
  });
});

/** A good season. */
const season: SeasonFacts = {
  weight: 1,
  emergedShare: 1,
  killedShare: 0,
  liftedShare: 0,
  boltedShare: 0,
  boltedIfProne: 0,
  hasBulb: true,
  isRipe: true,
  bulbMm: 70,
  bulbDryG: 16,
  smallDryG: 8,
  hopedDryG: 16,
  leavesAtOnset: 10,
  thirstyDays: 0,
  stored: null,
};
