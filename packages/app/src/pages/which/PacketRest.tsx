import {
  cultivarAssumption,
  packetAssumptions,
  practiceAssumptions,
  setsWarning,
  spanSentence,
} from '@neckfall/answers';
import type { Cultivar } from '@neckfall/data';
import type { Choice } from '@neckfall/engine';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { Cautions } from '../../controls/Cautions.tsx';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { onionLook } from '../../state/onion-look.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { WhichOnionReply } from '../../worker/which-onion.ts';
import { AgainstBest } from './AgainstBest.tsx';
import { Starts } from './Starts.tsx';

type Props = {
  reply: WhichOnionReply;
  /** Those of the reply, what can be done with the packet first. */
  choices: readonly Choice[];
  cultivar: Cultivar | null;
  isFresh: boolean;
};

/** The onion beside the best that can be had, its ways of starting, and what all this rests on. */
export function PacketRest({ reply: { read, grown, now }, choices, cultivar, isFresh }: Props) {
  const speaker = voice.value;
  const { say, day } = speaker;
  const look = onionLook.value;
  // where many run to flower, that is said beside the ways to start
  const isOfSets =
    choices.some(({ kind }) => kind.start === 'sets') && setsWarning(choices, speaker) === null;
  const assumed = [
    ...(cultivar ? [cultivarAssumption(cultivar, speaker)] : []),
    ...(read ? packetAssumptions(read, speaker) : []),
    say('which.assumed-day', { date: day(today.value) }),
    ...new Set(choices.flatMap(({ summary }) => practiceAssumptions(summary.plan, speaker))),
    say('which.order'),
    say('cultivars.assumed.memory'),
  ];
  return (
    <InTurn>
      <Starts choices={choices} isNamed={cultivar !== null} />
      <AgainstBest
        own={choices[now?.at ?? 0]}
        grown={grown}
        isFresh={isFresh}
        isNamed={cultivar !== null}
        look={look}
      />
      <Cautions
        of={[
          ...(isOfSets ? (['app.caution.sets'] as const) : []),
          'app.caution.bought',
          'app.caution.treated',
          'app.caution.promise',
        ]}
      />
      <HowWeKnow assumed={assumed} span={spanSentence(choices[0].summary, 'lead', speaker)} />
      <AnswerFoot />
    </InTurn>
  );
}
