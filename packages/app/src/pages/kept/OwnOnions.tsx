import type { OwnCultivar } from '@neckfall/engine';
import { askedOfOwn, canGrow } from '../../save/own-onion.ts';
import { noOnion } from '../../state/no-onion.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** Onions of the grower's own; each leads to its page, where enough is known of it. */
export function OwnOnions({ own }: { own: readonly OwnCultivar[] }) {
  const { say } = voice.value;
  return (
    <section aria-labelledby="own-onions">
      <h2 id="own-onions">{say('app.garden.onions')}</h2>
      <ul>
        {own.map((onion) => (
          <li key={onion.id}>
            {canGrow(onion) ? (
              <a href={hrefTo('which', { ...noOnion, planting: null, packet: true, ...askedOfOwn(onion) })}>
                {onion.name}
              </a>
            ) : (
              say('app.garden.onion.bare', { name: onion.name })
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
