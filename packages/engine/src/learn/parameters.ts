import { type Draw, drawSpread, leastFactor, noDraw } from '../season/index.ts';

/** What a season can tell of its plants: day length needed, °C d to ripen, °C d a leaf, growth; all against the type's. */
export const learntParameters = ['criticalH', 'ripening', 'phyllochron', 'growth'] as const;
/** One of {@link learntParameters}. */
export type LearntParameter = (typeof learntParameters)[number];

/** What is made of each parameter, by its name. */
export function ofEach<Value>(make: (of: LearntParameter) => Value): Record<LearntParameter, Value> {
  return {
    criticalH: make('criticalH'),
    ripening: make('ripening'),
    phyllochron: make('phyllochron'),
    growth: make('growth'),
  };
}

/** A mean and a standard deviation, in the parameter's own unit: h for the day length, else a factor. */
export type Estimate = { mean: number; sd: number };

/** What is thought of an onion at a place. `growth` is null until bulbs were measured: the model's size stands. */
export type Belief = Record<Exclude<LearntParameter, 'growth'>, Estimate> & { growth: Estimate | null };

/** The middle of a kind. */
export const usualValues: Readonly<Record<LearntParameter, number>> = {
  criticalH: noDraw.criticalShiftH,
  ripening: noDraw.ripeningFactor,
  phyllochron: noDraw.phyllochronFactor,
  growth: noDraw.growthFactor,
};

/**
 * Standard deviations of a season's plants about it. Growth: trials of one region, fed and watered alike, yield a
 * quarter more or less than their mean (Hokkaido 1973–75 and 2000, Carrington 2001; gardens memory).
 */
export const usualSpread: Readonly<Record<LearntParameter, number>> = { ...drawSpread, growth: 0.25 };

/**
 * Part of that spread that each year brings anew; the rest is the onion's and the place's own and is there next year.
 * Two published sources of one district agree within 10 days in 83 of 100 crops, so each strays by about 5 days from
 * its own middle, a third of what ripening is allowed here.
 */
export const yearlyShare = 0.4;

/** Plants grow at least this much of what the model says, –. */
const leastGrowth = 0.3;

/** What lasts of a parameter, nothing known but the kind. */
export function usualLasting(of: LearntParameter): Estimate {
  const lasting = Math.sqrt(1 - yearlyShare ** 2);
  return { mean: usualValues[of], sd: lasting * usualSpread[of] };
}

/** Nothing known but the kind. */
export function usualBelief(): Belief {
  return { ...ofEach(usualLasting), growth: null };
}

/** A season's plants as believed: what lasts and what the year brings together. */
export function seasonEstimate(belief: Belief, of: LearntParameter): Estimate {
  const lasting = belief[of] ?? { mean: usualValues[of], sd: 0 };
  if (belief[of] === null) return lasting;
  return { mean: lasting.mean, sd: Math.hypot(lasting.sd, yearlyShare * usualSpread[of]) };
}

/** The draw of a season from its four values. */
export function drawOf(values: Readonly<Record<LearntParameter, number>>): Draw {
  return {
    criticalShiftH: values.criticalH,
    ripeningFactor: Math.max(leastFactor, values.ripening),
    phyllochronFactor: Math.max(leastFactor, values.phyllochron),
    growthFactor: Math.max(leastGrowth, values.growth),
  };
}

/** The four values of a draw. */
export function valuesOf(draw: Draw): Record<LearntParameter, number> {
  return {
    criticalH: draw.criticalShiftH,
    ripening: draw.ripeningFactor,
    phyllochron: draw.phyllochronFactor,
    growth: draw.growthFactor,
  };
}
