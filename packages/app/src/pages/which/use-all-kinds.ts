import { civilDate, type Kind, type Offer } from '@neckfall/engine';
import { useMemo } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { canGrow } from '../../garden/own-onion.ts';
import { gardenStanding, ownOnions } from '../../state/garden.ts';
import { site, siteKey } from '../../state/place.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import { allKinds } from './wanted.ts';

const none: readonly Offer[] = [];

export type AllKinds = {
  kinds: readonly Kind[];
  /** Onions of the grower's own among them; null until they are known. */
  own: readonly Offer[] | null;
  /** Changes when what grows of them here does; null until all is known. */
  key: string | null;
  failed: string | null;
};

/** Every way of every onion of the catalogue and the kept garden, at the place of the page. */
export function useAllKinds(): AllKinds {
  const mine = ownOnions.value.filter(canGrow);
  const { year } = civilDate(today.value);
  const ownKey =
    mine.length > 0 && siteKey.value !== null ? JSON.stringify([siteKey.value, year, mine]) : null;
  const known = useAnswer(ownKey, () => ask('ownOffers', { site: site.value!, own: mine, year }));
  const own =
    gardenStanding.value === null ? null : mine.length === 0 ? none : known.isFresh ? known.answer : null;
  const kinds = useMemo(() => allKinds(own ?? none), [own]);
  const key = own && siteKey.value && JSON.stringify([siteKey.value, startOptions.value, today.value, own]);
  return { kinds, own, key, failed: known.failed };
}
