import type { SeasonSummary } from '../season/index.ts';
import { type CommonAnswer, smallCauses } from './common-answer.ts';

/** What a season shows in the answer that it stands in. */
export const seasonRoles = [
  'own',
  'stranger',
  'late-start',
  'short',
  'intermediate',
  'long',
  ...smallCauses,
  'small-sets',
  'large-sets',
  'warm-sets',
  'kitchen-bulb',
  'warm-bulb',
  'shop-set',
  'from-tropics',
  'from-north',
  'autumn',
  'autumn-fleece',
  'spring',
  'trays-first',
  'trays-best',
  'trays-last',
  'bed',
  'lot',
] as const;

/** What one season shows in its answer. */
export type SeasonRole = (typeof seasonRoles)[number];

/** A season with what it shows in its answer. */
export type SeasonInRole = { role: SeasonRole; summary: SeasonSummary };

/** The seasons that an answer was read from, in the order in which they are told. */
export function seasonsIn(answer: CommonAnswer): SeasonInRole[] {
  const of = (role: SeasonRole, summary: SeasonSummary | null): SeasonInRole[] =>
    summary ? [{ role, summary }] : [];
  switch (answer.question) {
    case 'never-bulbed':
      return [
        ...of('own', answer.own),
        ...of('stranger', answer.stranger?.summary ?? null),
        ...of('late-start', answer.late?.summary ?? null),
      ];
    case 'which-onion':
    case 'too-late':
      return answer.classes.flatMap((one) => of(one.class, one.summary));
    case 'too-small':
      return [...of('own', answer.own), ...answer.trials.flatMap(({ cause, summary }) => of(cause, summary))];
    case 'sets-flower':
      return [
        ...of('small-sets', answer.small),
        ...of('large-sets', answer.large),
        ...of('warm-sets', answer.warm),
      ];
    case 'kitchen-onions':
      return [
        ...of('shop-set', answer.set),
        ...of('kitchen-bulb', answer.bulb),
        ...of('warm-bulb', answer.warm),
      ];
    case 'from-abroad':
      return [
        ...of('own', answer.own),
        ...answer.kinds.flatMap(({ from, summary }) => of(`from-${from}`, summary)),
      ];
    case 'sow-autumn':
      return [
        ...of('autumn', answer.autumn),
        ...of('autumn-fleece', answer.fleece),
        ...of('spring', answer.spring),
      ];
    case 'start-indoors': {
      const { stretch, bed } = answer;
      return [
        ...of('trays-first', stretch?.first ?? null),
        ...of('trays-best', stretch?.best ?? null),
        ...of('trays-last', stretch?.last ?? null),
        ...of('bed', bed),
      ];
    }
    case 'how-many':
      return answer.year.lots.flatMap(({ summary }) => of('lot', summary));
  }
}
