/** What may be asked of the grower, each with its answers; which one to ask is worked out from the causes still open. */
export const questionAnswers = {
  watering: ['often', 'now-and-then', 'rain-only'],
  'last-fed': ['never', 'spring', 'after-bulbs-began'],
  weeds: ['kept-clear', 'some', 'overgrown'],
  sun: ['all-day', 'half-day', 'shade'],
  'set-size': ['pea', 'hazelnut', 'walnut'],
  'stems-before-cold': ['thinner-than-pencil', 'pencil', 'thicker'],
  'seed-from': ['packet', 'saved-or-loose'],
  'seed-age': ['this-year', 'older'],
  roots: ['white', 'pink', 'few-or-rotten'],
  base: ['firm', 'white-mould', 'brown-inside', 'grubs'],
  rot: ['at-the-neck', 'at-the-base', 'a-ring-inside', 'watery-all-over'],
  'leaf-marks': ['silver', 'purple-rings', 'grey-down', 'white-flecks', 'none'],
  'tops-at-lifting': ['all-down', 'some-down', 'green'],
  drying: ['dry-and-airy', 'damp-or-heaped', 'in-hot-sun', 'not-dried'],
  'store-frost': ['never', 'some-nights'],
  'store-warmth': ['cold', 'cool', 'warm'],
  'stem-ends': ['bitten-off', 'gone-whole', 'shrivelled'],
  salty: ['no', 'yes'],
  'alliums-before': ['not-for-years', 'lately'],
} as const satisfies Record<string, readonly string[]>;

/** A name of {@link questionAnswers}. */
export type Question = keyof typeof questionAnswers;
/** The answers to a question. */
export type AnswerOf<Q extends Question = Question> = (typeof questionAnswers)[Q][number];
/** The names of {@link questionAnswers}. */
export const questions = Object.keys(questionAnswers) as readonly Question[];

/** A question that was put and passed over tells nothing and is not put again. */
export const passedOver = 'not-sure';

/** What the grower answered; a question that is not there was not put. */
export type Said = Partial<{ [Q in Question]: AnswerOf<Q> | typeof passedOver }>;

/** So many are asked at most. */
export const mostQuestions = 3;
