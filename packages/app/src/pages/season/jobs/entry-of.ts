import { isFeed, type Job } from '@neckfall/engine';
import { lastLookedAt } from '../../../garden/seen.ts';
import { seen } from '../../../state/planting.ts';
import { today } from '../../../state/today.ts';
import { type Draft, emptyDraft } from '../seen/draft.ts';

/**
 * The entry that says that a piece of work was done, begun with what was advised; null where no entry would say so and
 * a mark does.
 */
export function entryOfWork({ name, why: { values } }: Job): Draft | null {
  const draft = emptyDraft(today.value, lastLookedAt(seen.value));
  const number = (field: string) => (typeof values[field] === 'number' ? values[field] : null);
  switch (name) {
    case 'water':
      return { ...draft, numbers: { wateredLitres: number('litresForBed') } };
    case 'feed': {
      const { product } = values;
      const fedProduct = typeof product === 'string' && isFeed(product) ? product : '';
      return { ...draft, fedProduct, numbers: { fedG: number('gramsForBed') } };
    }
    case 'lift':
      return { ...draft, lifted: true };
    default:
      return null;
  }
}
