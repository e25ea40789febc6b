import type { Symptom } from './symptoms.ts';

/** Whether what was lifted, or stands, may be eaten. `cut-away`: the sound part. */
export type Eating = 'yes' | 'cut-away' | 'no';
/** Whether it may be stored. `eat-first`: for weeks, before all others. */
export type Storing = 'yes' | 'eat-first' | 'no';

/** What to take care of, each a sentence. */
export const whyCautions = [
  'mould-throw-away',
  'not-sure-is-it-onion',
  'pets',
  'do-not-move-soil',
  'not-on-compost',
  'pesticide-local-rules',
  'green-is-not-potato',
] as const;
/** One of {@link whyCautions}. */
export type WhyCaution = (typeof whyCautions)[number];

/** What is still to be had from a crop. */
export type WhyRescue = { eating: Eating; storing: Storing; symptoms: readonly Symptom[] };

type Rescue = { eating: Eating; storing: Storing; cautions: readonly WhyCaution[] };

/**
 * What is still to be had from a crop with a symptom; what to do today is a sentence of its own for each. Common practice
 * of kitchens and growers, no source, but for: bolted and thick-necked bulbs are eaten first (seen: USDA, Storing garden
 * produce); frozen ones thaw slowly (seen: a holding page of Oregon State).
 */
export const rescueOf: Readonly<Record<Symptom, Rescue>> = {
  'few-came-up': { eating: 'yes', storing: 'yes', cautions: [] },
  'seedlings-toppled': { eating: 'no', storing: 'no', cautions: ['pesticide-local-rules'] },
  'gone-in-a-row': { eating: 'yes', storing: 'yes', cautions: ['pesticide-local-rules'] },
  'died-in-winter': { eating: 'no', storing: 'no', cautions: [] },
  'out-of-the-ground': { eating: 'yes', storing: 'yes', cautions: [] },
  'dry-tips': { eating: 'yes', storing: 'yes', cautions: [] },
  'silver-streaks': { eating: 'yes', storing: 'yes', cautions: ['pesticide-local-rules'] },
  'grey-fur': {
    eating: 'cut-away',
    storing: 'eat-first',
    cautions: ['pesticide-local-rules', 'not-on-compost'],
  },
  'purple-spots': { eating: 'cut-away', storing: 'eat-first', cautions: ['pesticide-local-rules'] },
  'bent-leaves': { eating: 'yes', storing: 'eat-first', cautions: [] },
  wilted: { eating: 'yes', storing: 'eat-first', cautions: [] },
  flowered: { eating: 'yes', storing: 'eat-first', cautions: ['not-sure-is-it-onion'] },
  'no-bulb': { eating: 'yes', storing: 'no', cautions: ['not-sure-is-it-onion'] },
  'tops-stood': { eating: 'yes', storing: 'eat-first', cautions: [] },
  'fell-early': { eating: 'yes', storing: 'yes', cautions: [] },
  small: { eating: 'yes', storing: 'yes', cautions: [] },
  'thick-necks': { eating: 'yes', storing: 'eat-first', cautions: [] },
  split: { eating: 'yes', storing: 'eat-first', cautions: [] },
  'stalk-in-bulb': { eating: 'cut-away', storing: 'eat-first', cautions: [] },
  'green-shoulders': { eating: 'yes', storing: 'eat-first', cautions: ['green-is-not-potato'] },
  scalded: { eating: 'cut-away', storing: 'eat-first', cautions: [] },
  soft: { eating: 'no', storing: 'no', cautions: ['mould-throw-away', 'not-on-compost'] },
  'white-fluff': { eating: 'cut-away', storing: 'no', cautions: ['do-not-move-soil', 'not-on-compost'] },
  'pink-roots': { eating: 'yes', storing: 'yes', cautions: ['do-not-move-soil'] },
  maggots: { eating: 'cut-away', storing: 'no', cautions: ['not-on-compost', 'pesticide-local-rules'] },
  'too-hot': { eating: 'yes', storing: 'yes', cautions: [] },
  'neck-rot': { eating: 'no', storing: 'no', cautions: ['mould-throw-away', 'not-on-compost'] },
  'rotted-in-store': { eating: 'no', storing: 'no', cautions: ['mould-throw-away', 'not-on-compost'] },
  'black-dust': { eating: 'cut-away', storing: 'eat-first', cautions: ['mould-throw-away'] },
  sprouted: { eating: 'yes', storing: 'eat-first', cautions: [] },
  glassy: { eating: 'cut-away', storing: 'eat-first', cautions: [] },
};

const eatings = ['yes', 'cut-away', 'no'] as const satisfies readonly Eating[];
const storings = ['yes', 'eat-first', 'no'] as const satisfies readonly Storing[];

/** What may be done with a crop that shows all of these: the strictest that any of them asks for. */
export function rescueFrom(symptoms: readonly Symptom[]): WhyRescue {
  const strictest = <Word>(words: readonly Word[], of: (symptom: Symptom) => Word) =>
    words[Math.max(...symptoms.map((symptom) => words.indexOf(of(symptom))))];
  return {
    eating: strictest(eatings, (symptom) => rescueOf[symptom].eating),
    storing: strictest(storings, (symptom) => rescueOf[symptom].storing),
    symptoms,
  };
}

/** Cautions of what was seen; onions and their waste harm animals whatever it is. */
export function cautionsOf(symptoms: readonly Symptom[]): WhyCaution[] {
  return [...new Set([...symptoms.flatMap((symptom) => rescueOf[symptom].cautions), 'pets' as const])];
}
