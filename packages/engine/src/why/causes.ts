/**
 * What can be behind it. `run`: the season run again with and without it tells; `seen`: no run can know, what else was
 * seen has to tell.
 */
export const causeKinds = {
  'days-too-short': 'run',
  'type-too-late': 'run',
  'type-too-early': 'run',
  'started-too-late': 'run',
  'cold-on-large-plants': 'run',
  'large-sets': 'run',
  'cold-stored-sets': 'run',
  heat: 'run',
  'cool-season': 'run',
  thirst: 'run',
  crowding: 'run',
  shade: 'run',
  'winter-cold': 'run',
  'cold-soil': 'run',
  'warm-store': 'run',
  'damp-store': 'run',
  'short-keeper': 'run',
  'frozen-store': 'run',
  'lifted-unripe': 'run',
  'wrong-seed': 'run',
  hunger: 'seen',
  'late-nitrogen': 'seen',
  weeds: 'seen',
  salt: 'seen',
  'uneven-water': 'seen',
  'spring-cold-snap': 'seen',
  'old-seed': 'seen',
  'dry-seedbed': 'seen',
  'damping-off': 'seen',
  'birds-or-cutworms': 'seen',
  'onion-fly': 'seen',
  thrips: 'seen',
  'downy-mildew': 'seen',
  'purple-blotch': 'seen',
  'leaf-blight': 'seen',
  'pink-root': 'seen',
  'white-rot': 'seen',
  'basal-rot': 'seen',
  'bacterial-rot': 'seen',
  'neck-rot-mould': 'seen',
  'black-mould': 'seen',
  ozone: 'seen',
  wind: 'seen',
  'light-on-bulbs': 'seen',
  'sun-on-lifted-bulbs': 'seen',
  'badly-dried': 'seen',
  'knocked-about': 'seen',
  'hot-kind': 'seen',
  'nothing-wrong': 'seen',
} as const satisfies Record<string, 'run' | 'seen'>;

/** A name of {@link causeKinds}. */
export type Cause = keyof typeof causeKinds;
export type RunCause = { [C in Cause]: (typeof causeKinds)[C] extends 'run' ? C : never }[Cause];
/** A cause of which no run can know. */
export type SeenCause = Exclude<Cause, RunCause>;
/** The names of {@link causeKinds}. */
export const causes = Object.keys(causeKinds) as readonly Cause[];
