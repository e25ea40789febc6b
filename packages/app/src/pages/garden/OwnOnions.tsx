import type { OwnCultivar } from '@neckfall/engine';
import { shown } from '@neckfall/words';
import { useRef } from 'preact/hooks';
import { noOnion } from '../../address/no-onion.ts';
import { askedOfOwn, canGrow } from '../../garden/own-onion.ts';
import { changeGarden } from '../../state/garden.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** Onions of the grower's own; each leads to its page, where enough is known of it. */
export function OwnOnions({ own }: { own: readonly OwnCultivar[] }) {
  const { say } = voice.value;
  const head = useRef<HTMLHeadingElement>(null);

  async function remove({ id, name }: OwnCultivar): Promise<void> {
    await changeGarden({ code: 'onion-removed', name }, (now) =>
      now ? { ...now, cultivars: now.cultivars.filter((onion) => onion.id !== id) } : now,
    );
    // the button is gone: go on from the list
    head.current?.focus();
  }

  return (
    <section aria-labelledby="own-onions">
      <h2 id="own-onions" ref={head} tabIndex={-1}>
        {say('app.garden.onions')}
      </h2>
      <ul>
        {own.map((onion) => (
          <li key={onion.id}>
            {canGrow(onion) ? (
              <>
                <a href={hrefTo('which', { ...noOnion, planting: null, packet: true, ...askedOfOwn(onion) })}>
                  {shown(onion.name)}
                </a>{' '}
                <span>{inWords(onion)}</span>
              </>
            ) : (
              say('app.garden.onion.bare', { name: onion.name })
            )}{' '}
            <button
              type="button"
              class="plain"
              aria-label={say('app.garden.onion.remove-of', { name: onion.name })}
              onClick={() => void remove(onion)}
            >
              {say('app.garden.plan.remove')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What its packet says. */
function inWords({ class: printed, packetHours, packetDays }: OwnCultivar): string {
  const { say, all, dayLength } = voice.value;
  return all([
    ...(printed === null ? [] : [say(`class.${printed}`)]),
    ...(packetHours === null ? [] : [say('app.which.packet.hours-is', { hours: dayLength(packetHours) })]),
    ...(packetDays === null ? [] : [say('app.which.packet.days-is', { days: packetDays })]),
  ]);
}
