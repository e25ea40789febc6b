import { cultivarAssumption, packetAssumptions, practiceAssumptions } from '@neckfall/answers';
import type { Cultivar } from '@neckfall/data';
import type { PacketNote, WhenAnswer } from '@neckfall/engine';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { voice } from '../../state/settings.ts';
import { startOptions } from './start-options.ts';

type Props = { answer: WhenAnswer; notes: readonly PacketNote[]; cultivar: Cultivar | null };

/** What the answer rests on: the onion, the way of growing, and what its best start hangs on. */
export function Grounds({ answer: { starts, windows }, notes, cultivar }: Props) {
  const speaker = voice.value;
  const { plan } = starts[0].summary;
  const best = starts.find(({ dayOfYear }) => dayOfYear === windows[0]?.best);
  const onion = cultivar
    ? [cultivarAssumption(cultivar, speaker)]
    : packetAssumptions({ ...plan, notes: [...notes] }, speaker);
  return (
    <HowWeKnow
      assumed={[...onion, ...practiceAssumptions({ ...plan, ...startOptions.value }, speaker, true)]}
      plan={best?.summary.plan ?? null}
    />
  );
}
