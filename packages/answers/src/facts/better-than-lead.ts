import type { ClassAnswer } from '@neckfall/engine';

type Ending = Pick<ClassAnswer, 'verdict' | 'gamble'>;

/** How sure a crop is: what may be said of all kinds depends on the surest. */
const sureness = ({ verdict, gamble }: Ending): number =>
  verdict === 'good' ? 3 : gamble ? 2 : verdict === 'small' ? 1 : 0;

/** The first of the kinds after the lead that ends better than it; null where none does. */
export function betterThanLead<Kind extends Ending>([lead, ...rest]: readonly Kind[]): Kind | null {
  const best = Math.max(...rest.map(sureness));
  return best > sureness(lead) ? (rest.find((kind) => sureness(kind) === best) ?? null) : null;
}
