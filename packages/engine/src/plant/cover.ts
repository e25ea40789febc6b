/**
 * What a cover adds to the air at the plants, °C on the daily minimum and maximum, and the share of light it lets through.
 * Fleece: Oregon trials 1983–84, minimum +0.5 to +1.8; maximum memory. Tunnel: Savage 1980, +1.3 and +4.2.
 * Light: memory.
 */
export const covers = {
  none: { minC: 0, maxC: 0, light: 1 },
  fleece: { minC: 1.2, maxC: 2.5, light: 0.85 },
  tunnel: { minC: 1.3, maxC: 4.2, light: 0.8 },
} as const;

/** What lies over the plants: a name of {@link covers}. */
export type Cover = keyof typeof covers;

/** A cover lies on for this many days from the start, and again on nights below this temperature. */
export const coverUse = { days: 42, frostBelowC: 0 } as const;
