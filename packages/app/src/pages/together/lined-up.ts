import type { Asked } from '../../address/address-form.ts';
import type { Drawn } from './drawn-lines.ts';

/** As it stands in a link; anything else there is of another page. */
export const linedUp = 'longest-day';

export function isLinedUpAsked({ view }: Asked): boolean {
  return view === linedUp;
}

/** Whether there are places on both halves of the globe, so that lining them up changes anything. */
export function isOfBothHalves({ lines }: Pick<Drawn, 'lines'>): boolean {
  const souths = lines.map(({ found }) => found.located.latitudeDeg < 0);
  return souths.includes(true) && souths.includes(false);
}
