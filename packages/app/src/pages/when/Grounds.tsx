import {
  autumnAssumption,
  bestStart,
  cultivarAssumption,
  districtAssumption,
  packetAssumptions,
  practiceAssumptions,
  spanSentence,
} from '@neckfall/answers';
import type { Cultivar } from '@neckfall/data';
import type { PacketNote, WhenAnswer } from '@neckfall/engine';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { place } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';

type Props = { answer: WhenAnswer; notes: readonly PacketNote[]; cultivar: Cultivar | null };

/** What the answer rests on: the onion, the way of growing, and what its best start hangs on. */
export function Grounds({ answer, notes, cultivar }: Props) {
  const { starts } = answer;
  const speaker = voice.value;
  const { plan } = starts[0].summary;
  const best = bestStart(answer);
  const onion = cultivar
    ? [cultivarAssumption(cultivar, speaker)]
    : packetAssumptions({ ...plan, notes: [...notes] }, speaker);
  // packets of a class may hold another kind for autumn
  const wintering = starts.find(({ summary }) => summary.plan.type !== plan.type)?.summary.plan.type;
  if (wintering) onion.push(autumnAssumption(wintering, speaker));
  return (
    <HowWeKnow
      assumed={[
        ...onion,
        ...districtAssumption(place.value?.practice ?? [], speaker),
        ...practiceAssumptions({ ...plan, ...startOptions.value }, speaker, true),
      ]}
      plan={best?.plan ?? null}
      span={best ? spanSentence(best, 'best-start', speaker) : null}
    />
  );
}
