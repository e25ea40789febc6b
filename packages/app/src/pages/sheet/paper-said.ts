import type { Paper } from '@neckfall/pictures';
import { asked } from '../../state/route.ts';
import { units } from '../../state/settings.ts';

export const papersHad: readonly Paper[] = ['a4', 'letter'];

/** The paper of the address, else that of those who measure so. */
export function paperSaid(): Paper {
  return papersHad.find((paper) => paper === asked.value.paper) ?? (units.value === 'us' ? 'letter' : 'a4');
}
