import { noOnion } from '../../address/no-onion.ts';
import { hrefOfList } from '../../state/onion-hrefs.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** The two ways into the page: a packet in the hand, or nothing yet. */
export function WaysIn({ hasPacket }: { hasPacket: boolean }) {
  const { say } = voice.value;
  return (
    <nav aria-label={say('app.which.ways')}>
      <ul class="ways-in">
        <li>
          <a
            href={hrefTo('which', { ...noOnion, packet: true })}
            aria-current={hasPacket ? 'true' : undefined}
          >
            {say('app.which.way.packet')}
          </a>
        </li>
        <li>
          <a href={hrefOfList()} aria-current={hasPacket ? undefined : 'true'}>
            {say('app.which.way.list')}
          </a>
        </li>
      </ul>
    </nav>
  );
}
