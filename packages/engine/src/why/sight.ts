import { ramp } from '../plant/index.ts';
import type { SeasonFacts } from './season-facts.ts';
import type { Symptom } from './symptoms.ts';

/*
 * How likely a grower is to see and name a thing in a season that came to this. All memory, adjustable: nobody has counted
 * what gardeners notice. The limits are those at which growers speak of it: one plant in ten in flower, a third fewer
 * seedlings, a bulb half the size it should be.
 */

/** Seen although nothing in the season has brought it. */
const byChance = 0.005;

/** Probability that a symptom is seen, 0…1. */
export function seenShare(symptom: Symptom, of: SeasonFacts): number {
  return byChance + (0.97 - byChance) * sight(symptom, of);
}

/** The larger, the likelier small bulbs are noticed about the size that is small here: a half at that size. */
const sizeSlope = 6;

/** Bulbs of this share of what might have been are called small by half of their growers. */
const smallOfHoped = 0.6;
/** Kinds that flower easily, of all. */
const proneShare = 0.25;

function flowering({ boltedShare, boltedIfProne }: SeasonFacts): number {
  return (1 - proneShare) * ramp(boltedShare, 0.04, 0.3) + proneShare * ramp(boltedIfProne, 0.04, 0.3);
}

function sight(symptom: Symptom, of: SeasonFacts): number {
  const stood = 1 - of.killedShare;
  const isUp = of.emergedShare > 0;
  switch (symptom) {
    case 'few-came-up':
      return ramp(of.emergedShare, 0.75, 0.4);
    case 'died-in-winter':
      return ramp(of.killedShare, 0.1, 0.45);
    case 'out-of-the-ground':
      return ramp(of.liftedShare, 0.05, 0.35);
    case 'flowered':
      return flowering(of);
    case 'stalk-in-bulb':
      return 0.6 * flowering(of);
    case 'no-bulb':
      if (!isUp) return 0.3;
      if (of.hasBulb)
        return of.isRipe ? 0.6 * ramp(of.bulbMm, 25, 12) : Math.max(0.3, ramp(of.bulbMm, 35, 15));
      return stood;
    case 'tops-stood':
      return isUp && !of.isRipe ? 0.9 * stood : 0;
    case 'thick-necks':
      if (!of.hasBulb) return isUp ? 0.25 * stood : 0;
      return of.isRipe ? 0.02 + 0.12 * flowering(of) : 0.7;
    case 'small':
      if (!of.hasBulb) return isUp ? 0.35 * stood : 0;
      return 1 / (1 + (of.bulbDryG / Math.max(of.smallDryG, smallOfHoped * of.hopedDryG)) ** sizeSlope);
    case 'fell-early':
      if (!of.isRipe) return 0;
      return 0.04 + 0.4 * ramp(of.leavesAtOnset, 8, 5) + 0.3 * ramp(of.thirstyDays, 10, 40);
    case 'wilted':
      return 0.7 * ramp(of.thirstyDays, 8, 35);
    case 'dry-tips':
      return 0.04 + 0.5 * ramp(of.thirstyDays, 5, 30);
    case 'too-hot':
      return 0.08 + 0.3 * ramp(of.thirstyDays, 5, 30);
    case 'split':
      return 0.025 + 0.04 * flowering(of);
    case 'soft':
      return of.hasBulb && !of.isRipe ? 0.15 : 0.005;
    case 'sprouted':
      return of.stored ? ramp(of.stored.sprouted, 0.02, 0.25) : 0;
    case 'rotted-in-store':
      return of.stored ? ramp(of.stored.rotten, 0.03, 0.25) : 0;
    case 'neck-rot':
      return of.stored ? ramp(of.stored.rotten, 0.02, 0.15) * (0.1 + 0.9 * of.stored.thickNecks) : 0;
    case 'glassy':
      return of.stored ? ramp(of.stored.frozen, 0.01, 0.15) : 0;
    case 'bent-leaves':
      return 0.05;
    case 'seedlings-toppled':
    case 'gone-in-a-row':
    case 'silver-streaks':
    case 'grey-fur':
    case 'purple-spots':
    case 'green-shoulders':
    case 'scalded':
    case 'white-fluff':
    case 'pink-roots':
    case 'maggots':
    case 'black-dust':
      return 0;
  }
}

/** What nobody leaves out who saw it. */
const striking = ['died-in-winter', 'flowered', 'no-bulb', 'few-came-up'] as const satisfies Symptom[];
/** A grower who saw a striking thing names it so often. */
const named = 0.6;

/** Probability that nothing strikes in a season but what was told. */
export function noneUntold(told: readonly Symptom[], of: SeasonFacts): number {
  let share = 1;
  for (const symptom of striking) if (!told.includes(symptom)) share *= 1 - named * sight(symptom, of);
  return share;
}
