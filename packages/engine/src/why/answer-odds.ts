import type { Cause } from './causes.ts';
import type { AnswerOf, Question } from './questions.ts';

/**
 * How growers answer whose crop has a cause, one share for each answer in its order; `usual`: those of any other crop. All
 * memory, adjustable.
 */
type Odds = { usual: readonly number[]; with: Partial<Record<Cause, readonly number[]>> };

/** How growers answer each question, by what their crop has. */
export const answerOdds: Readonly<Record<Question, Odds>> = {
  watering: {
    usual: [0.4, 0.4, 0.2],
    with: { thirst: [0.03, 0.35, 0.62], 'uneven-water': [0.1, 0.7, 0.2], 'bacterial-rot': [0.65, 0.25, 0.1] },
  },
  'last-fed': {
    usual: [0.3, 0.55, 0.15],
    with: { hunger: [0.8, 0.18, 0.02], 'late-nitrogen': [0.02, 0.18, 0.8] },
  },
  weeds: { usual: [0.5, 0.4, 0.1], with: { weeds: [0.03, 0.27, 0.7] } },
  sun: { usual: [0.7, 0.25, 0.05], with: { shade: [0.05, 0.35, 0.6] } },
  'set-size': { usual: [0.3, 0.6, 0.1], with: { 'large-sets': [0.02, 0.23, 0.75] } },
  'stems-before-cold': {
    usual: [0.6, 0.3, 0.1],
    with: { 'cold-on-large-plants': [0.1, 0.4, 0.5], 'winter-cold': [0.8, 0.15, 0.05] },
  },
  'seed-from': { usual: [0.85, 0.15], with: { 'wrong-seed': [0.45, 0.55] } },
  'seed-age': { usual: [0.75, 0.25], with: { 'old-seed': [0.08, 0.92] } },
  roots: {
    usual: [0.85, 0.05, 0.1],
    with: {
      'pink-root': [0.05, 0.85, 0.1],
      'white-rot': [0.1, 0.02, 0.88],
      'basal-rot': [0.2, 0.05, 0.75],
      'onion-fly': [0.3, 0.02, 0.68],
    },
  },
  base: {
    usual: [0.92, 0.02, 0.04, 0.02],
    with: {
      'white-rot': [0.05, 0.88, 0.05, 0.02],
      'basal-rot': [0.08, 0.15, 0.75, 0.02],
      'onion-fly': [0.1, 0.02, 0.05, 0.83],
      'bacterial-rot': [0.6, 0.02, 0.33, 0.05],
    },
  },
  rot: {
    usual: [0.3, 0.2, 0.2, 0.3],
    with: {
      'neck-rot-mould': [0.85, 0.05, 0.05, 0.05],
      'badly-dried': [0.65, 0.1, 0.1, 0.15],
      'late-nitrogen': [0.6, 0.1, 0.15, 0.15],
      'lifted-unripe': [0.7, 0.05, 0.1, 0.15],
      'basal-rot': [0.02, 0.88, 0.05, 0.05],
      'white-rot': [0.02, 0.9, 0.03, 0.05],
      'bacterial-rot': [0.15, 0.05, 0.5, 0.3],
      'frozen-store': [0.05, 0.05, 0.1, 0.8],
      'knocked-about': [0.05, 0.15, 0.1, 0.7],
    },
  },
  'leaf-marks': {
    usual: [0.1, 0.03, 0.03, 0.1, 0.74],
    with: {
      thrips: [0.85, 0.02, 0.02, 0.06, 0.05],
      'purple-blotch': [0.05, 0.85, 0.02, 0.04, 0.04],
      'downy-mildew': [0.03, 0.05, 0.85, 0.04, 0.03],
      'leaf-blight': [0.03, 0.03, 0.03, 0.85, 0.06],
      ozone: [0.05, 0.01, 0.01, 0.55, 0.38],
    },
  },
  'tops-at-lifting': {
    usual: [0.5, 0.4, 0.1],
    with: { 'lifted-unripe': [0.02, 0.2, 0.78], 'late-nitrogen': [0.15, 0.4, 0.45] },
  },
  drying: {
    usual: [0.75, 0.1, 0.1, 0.05],
    with: {
      'badly-dried': [0.05, 0.5, 0.05, 0.4],
      'sun-on-lifted-bulbs': [0.05, 0.02, 0.92, 0.01],
      'neck-rot-mould': [0.4, 0.3, 0.1, 0.2],
    },
  },
  'store-frost': { usual: [0.85, 0.15], with: { 'frozen-store': [0.08, 0.92] } },
  'store-warmth': { usual: [0.3, 0.5, 0.2], with: { 'warm-store': [0.02, 0.2, 0.78] } },
  'stem-ends': {
    usual: [0.15, 0.35, 0.5],
    with: {
      'birds-or-cutworms': [0.6, 0.35, 0.05],
      'damping-off': [0.02, 0.08, 0.9],
      'onion-fly': [0.02, 0.18, 0.8],
    },
  },
  salty: { usual: [0.92, 0.08], with: { salt: [0.15, 0.85] } },
  'alliums-before': {
    usual: [0.6, 0.4],
    with: {
      'white-rot': [0.15, 0.85],
      'pink-root': [0.15, 0.85],
      'onion-fly': [0.35, 0.65],
      'basal-rot': [0.25, 0.75],
      'downy-mildew': [0.35, 0.65],
    },
  },
};

/** How likely a grower whose crop has a cause gives an answer. */
export function answerShare(question: Question, at: number, cause: Cause | null): number {
  const { usual, with: of } = answerOdds[question];
  return ((cause && of[cause]) ?? usual)[at];
}

/** Where an answer stands among those of its question; -1: it is none. */
export function answerAt(answers: readonly AnswerOf[], answer: string): number {
  return (answers as readonly string[]).indexOf(answer);
}
