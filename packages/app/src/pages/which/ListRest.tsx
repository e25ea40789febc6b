import { districtAssumption, practiceAssumptions, spanSentence } from '@neckfall/answers';
import { type Choice, groupKinds } from '@neckfall/engine';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { Cautions } from '../../controls/Cautions.tsx';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { place } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { Beside } from './Beside.tsx';
import { bestOf } from './best-of.ts';
import { Kinds } from './Kinds.tsx';
import type { Seasons } from './use-grown.ts';
import type { Wanted } from './wanted.ts';

type Props = {
  choices: readonly Choice[];
  /** All of them, or without the poor ones. */
  shown: readonly Choice[];
  seasons: Seasons;
  wanted: Wanted;
  onWhole: (isWhole: boolean) => void;
};

/** The kinds set side by side and told in words, and what all this rests on. */
export function ListRest({ choices, shown, seasons, wanted, onWhole }: Props) {
  const speaker = voice.value;
  const { say, day } = speaker;
  const best = bestOf(choices);
  const isWhole = shown.length > best.length;
  const growing = groupKinds(shown).flatMap(({ choices: [{ summary }] }) =>
    practiceAssumptions(summary.plan, speaker),
  );
  return (
    <InTurn>
      <Beside seasons={seasons} />
      <Kinds choices={shown} all={choices} />
      {choices.length > best.length && (
        <p>
          <button type="button" onClick={() => onWhole(!isWhole)}>
            {isWhole ? say('app.which.show-fewer') : say('app.which.show-all', { count: choices.length })}
          </button>
        </p>
      )}
      <Cautions
        of={['app.caution.sets', 'app.caution.bought', 'app.caution.treated', 'app.caution.promise']}
      />
      <HowWeKnow
        assumed={[
          say('which.assumed-catalogue', { count: wanted.names, kinds: wanted.kinds.length }),
          say('which.assumed-day', { date: day(today.value) }),
          ...districtAssumption(place.value?.practice ?? [], speaker),
          ...new Set(growing),
          say('which.order'),
          say('cultivars.assumed.keeps'),
          say('cultivars.assumed.memory'),
        ]}
        span={spanSentence(choices[0].summary, 'lead', speaker)}
      />
      <AnswerFoot />
    </InTurn>
  );
}
