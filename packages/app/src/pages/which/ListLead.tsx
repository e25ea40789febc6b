import {
  alikeSentence,
  choiceWhy,
  elsewhereSentence,
  namesOf,
  noNameHereSentence,
  whichHeadline,
} from '@neckfall/answers';
import { type Choice, groupKinds } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { onwardTo } from '../../state/onion-hrefs.ts';
import { country, placeName } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { FarOff } from './FarOff.tsx';
import { shopsOf } from './shops-of.ts';

const namesAhead = 6;

/** What to get in one sentence, its names, why, and what is as good. */
export function ListLead({ choices }: { choices: readonly Choice[] }) {
  const speaker = voice.value;
  const [best] = choices;
  const { names, start } = best.kind;
  const onward = onwardTo(names[0], start, best.summary.plan.startDay);
  const alike = alikeSentence(choices, speaker);
  const elsewhere =
    noNameHereSentence(choices, shopsOf.value, speaker) ??
    elsewhereSentence(bestLevel(choices), choices, shopsOf.value, speaker);
  return (
    <>
      <AnswerHeading text={whichHeadline(choices, placeName.value, today.value, speaker)} />
      <p class="because">
        {bestNames(choices, speaker)} {elsewhere !== null && `${elsewhere} `}
        {choiceWhy(best, speaker)}
      </p>
      {alike !== null && <p>{alike}</p>}
      <FarOff choices={choices} />
      <AnswerLinks
        links={[
          { href: onward.when, text: speaker.say('app.which.when') },
          { href: onward.season, text: speaker.say('app.which.season') },
        ]}
      />
    </>
  );
}

/** The leading choice with all names that the years can't tell from its own. */
function bestLevel(choices: readonly Choice[]): Choice {
  const [best] = choices;
  const level = levelOf(choices);
  return { ...best, kind: { ...best.kind, names: [...new Set(level.flatMap(({ kind }) => kind.names))] } };
}

/** Those of the leading kind that share its rank. */
function levelOf(choices: readonly Choice[]): readonly Choice[] {
  const [best] = choices;
  const [group] = groupKinds(choices);
  return group.choices.filter(({ rank }) => rank === best.rank);
}

/** The names to look for: those of the leading kind that the years can't tell from its first. */
function bestNames(choices: readonly Choice[], speaker: Speaker): string {
  const { say } = speaker;
  const best = bestLevel(choices);
  const words = namesOf(best, speaker, namesAhead, country.value);
  if (levelOf(choices).length > 1)
    return say('app.which.names-level', { names: words, years: best.summary.years });
  return say(best.kind.names.length > 1 ? 'which.names' : 'which.name', { names: words });
}
