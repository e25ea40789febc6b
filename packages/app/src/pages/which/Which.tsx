import '../../look/which.css';
import { asked } from '../../state/route.ts';
import { List } from './List.tsx';
import { PacketPage } from './PacketPage.tsx';
import { WaysIn } from './WaysIn.tsx';

/** Which onion: the one in the hand, or any that can be had. */
export function Which() {
  const { packet, holds, cultivar, packetHours, packetDays } = asked.value;
  const hasPacket =
    packet !== null || holds !== null || cultivar !== null || packetHours !== null || packetDays !== null;
  return (
    <>
      <WaysIn hasPacket={hasPacket} />
      {hasPacket ? <PacketPage /> : <List />}
    </>
  );
}
