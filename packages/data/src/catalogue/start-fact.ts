import type { Origin } from './cultivar.ts';

/** What ways of starting are compared by. */
export type StartTopic = 'time' | 'choice' | 'bolting' | 'losses' | 'work' | 'cost' | 'cautions';
/** In the order in which they are told. */
export const startTopics: readonly StartTopic[] = [
  'time',
  'choice',
  'bolting',
  'losses',
  'work',
  'cost',
  'cautions',
];

/** Against the other ways of starting. */
export type StartLevel = 'least' | 'little' | 'more' | 'most';

/**
 * One fact: the message `start-fact.<code>` with `values` filled in (unit as suffix: Days, Weeks, Mm, TempC, Pct).
 * `practice`: common practice, no source.
 */
export type StartFact = {
  code: string;
  values: Readonly<Record<string, number>>;
  origin: Origin | 'practice';
};

/** What is known of one way of starting. */
export type StartFacts = {
  /** Common practice, no source. Message `start-level.<topic>.<level>`. */
  levels: Readonly<Record<Exclude<StartTopic, 'time' | 'cautions'>, StartLevel>>;
  /** The fact that says most first. */
  facts: Readonly<Record<StartTopic, readonly StartFact[]>>;
};

export function fact(code: string, origin: StartFact['origin'], values: StartFact['values'] = {}): StartFact {
  return { code, values, origin };
}
