import type { ClassAnswer } from '@neckfall/engine';

type Ending = Pick<ClassAnswer, 'verdict' | 'gamble' | 'summary'>;

/** How sure a crop is: what may be said of all kinds depends on the surest. */
const sureness = ({ verdict, gamble }: Ending): number =>
  verdict === 'good' ? 3 : gamble ? 2 : verdict === 'small' ? 1 : 0;

/** What is good in fewer years is no way out for anybody. */
const leastGoodShare = 0.15;

/** The first of the kinds after the lead that ends better than it, and well often enough; null where none does. */
export function betterThanLead<Kind extends Ending>([lead, ...rest]: readonly Kind[]): Kind | null {
  const goodIn = ({ summary }: Ending) => summary.seasonShares.good;
  const better = rest.filter(
    (kind) => sureness(kind) > sureness(lead) && goodIn(kind) >= Math.max(leastGoodShare, goodIn(lead)),
  );
  const best = Math.max(...better.map(sureness));
  return better.find((kind) => sureness(kind) === best) ?? null;
}
