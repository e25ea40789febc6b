/** When a symptom is seen. */
export type SymptomTime = 'growing' | 'lifting' | 'store';

/**
 * What growers see, in the order in which a crop meets it. Some look alike and have opposite causes: white fluff on roots is
 * white rot, fluff at the neck is neck rot.
 */
export const symptomTimes = {
  'few-came-up': 'growing',
  'seedlings-toppled': 'growing',
  'gone-in-a-row': 'growing',
  'died-in-winter': 'growing',
  'out-of-the-ground': 'growing',
  'dry-tips': 'growing',
  'silver-streaks': 'growing',
  'grey-fur': 'growing',
  'purple-spots': 'growing',
  'bent-leaves': 'growing',
  wilted: 'growing',
  flowered: 'growing',
  'no-bulb': 'lifting',
  'tops-stood': 'lifting',
  'fell-early': 'lifting',
  small: 'lifting',
  'thick-necks': 'lifting',
  split: 'lifting',
  'stalk-in-bulb': 'lifting',
  'green-shoulders': 'lifting',
  scalded: 'lifting',
  soft: 'lifting',
  'white-fluff': 'lifting',
  'pink-roots': 'lifting',
  maggots: 'lifting',
  'too-hot': 'lifting',
  'neck-rot': 'store',
  'rotted-in-store': 'store',
  'black-dust': 'store',
  sprouted: 'store',
  glassy: 'store',
} as const satisfies Record<string, SymptomTime>;

/** A name of {@link symptomTimes}. */
export type Symptom = keyof typeof symptomTimes;
/** The names of {@link symptomTimes}. */
export const symptoms = Object.keys(symptomTimes) as readonly Symptom[];

/** More at once tell nothing more. */
export const mostSymptoms = 8;
