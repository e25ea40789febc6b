import type { Kind } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** How many months an onion keeps. */
export function keepingWords(
  { kind }: { kind: Pick<Kind, 'keepsMonths'> },
  { say, numberRange }: Speaker,
): string {
  return say('cultivars.months', { range: numberRange(...kind.keepsMonths, 1) });
}
