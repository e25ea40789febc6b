import {
  type Advice,
  alikeSentence,
  bestOfYearSentence,
  choiceWhy,
  elsewhereSentence,
  isDoubtful,
  namedOf,
  namesOf,
  noNameHereSentence,
  whereHeadline,
} from '@neckfall/answers';
import { type Choice, classOfType, groupKinds, type Plan } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { AnswerHeading, HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { onwardTo, onwardToClass } from '../../state/onion-hrefs.ts';
import { country, placeName } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { CameFrom } from './CameFrom.tsx';
import { FarOff } from './FarOff.tsx';
import { shopsOf } from './shops-of.ts';

/** Names before the picture: more would push it off a phone. */
const namesAhead = 3;

type Props = {
  choices: readonly Choice[];
  /** What the headline tells; null while it is worked out. */
  advice: Advice | null;
  /** Whether nothing narrows the list. */
  isAll: boolean;
};

/** What to get in one sentence, and its names. */
export function ListLead({ choices, advice, isAll }: Props) {
  const speaker = voice.value;
  const group = groupOf(choices, advice && namedOf(advice).summary.plan);
  return (
    <>
      {advice ? (
        <AnswerHeading
          text={whereHeadline(advice, placeName.value, today.value, speaker, isAll ? 'all' : 'list')}
        />
      ) : (
        <HeadingToCome />
      )}
      <p class="because">
        {namesSentence(group, levelOf(group), advice !== null && isDoubtful(advice, choices), speaker)}
      </p>
    </>
  );
}

/** Where the names are sold, why this kind, what is as good or comes sooner, and where to go from the answer. */
export function ListOnward({ choices, advice, isAll }: Props) {
  const speaker = voice.value;
  const named = advice && namedOf(advice).summary.plan;
  const group = groupOf(choices, named);
  const [best] = group;
  const elsewhere =
    noNameHereSentence(choices, shopsOf.value, speaker) ??
    elsewhereSentence(levelOf(group), choices, shopsOf.value, speaker);
  const { names, type, start } = best.kind;
  const { startDay } = named ?? best.summary.plan;
  const onward = isAll
    ? onwardToClass(classOfType[type], start, startDay)
    : onwardTo(names[0], start, startDay);
  const bestOfYear = advice && bestOfYearSentence(advice, today.value, speaker);
  const isUnsure = advice !== null && isDoubtful(advice, choices);
  const alike = alikeSentence(choices, best, speaker);
  return (
    <>
      {!isUnsure && (
        <>
          <p class="because">
            {elsewhere !== null && `${elsewhere} `}
            {choiceWhy(best, speaker)}
          </p>
          {bestOfYear !== null && <p>{bestOfYear}</p>}
          {alike !== null && <p>{alike}</p>}
          <FarOff choices={choices} startDay={startDay} />
        </>
      )}
      <CameFrom choices={choices} />
      <AnswerLinks
        links={[
          { href: onward.when, text: speaker.say('app.which.when') },
          { href: onward.season, text: speaker.say('app.which.season') },
        ]}
      />
    </>
  );
}

/** The choices of the kind that the headline names, else of the first. */
function groupOf(choices: readonly Choice[], named: Pick<Plan, 'type' | 'start'> | null): readonly Choice[] {
  const groups = groupKinds(choices);
  const found = groups.find(({ type, start }) => type === named?.type && start === named.start);
  return (found ?? groups[0]).choices;
}

/** The first of a kind with all names that the years can't tell from its own. */
function levelOf(group: readonly Choice[]): Choice {
  const [best] = group;
  const level = group.filter(({ rank }) => rank === best.rank);
  return { ...best, kind: { ...best.kind, names: [...new Set(level.flatMap(({ kind }) => kind.names))] } };
}

/** The names to look for. */
function namesSentence(
  [best]: readonly Choice[],
  level: Choice,
  isUnsure: boolean,
  speaker: Speaker,
): string {
  const { say } = speaker;
  const words = namesOf(level, speaker, namesAhead, country.value);
  if (isUnsure) return say('which.might', { names: words });
  if (level.kind.names.length > best.kind.names.length)
    return say('app.which.names-level', { names: words, years: best.summary.years });
  return say(best.kind.names.length > 1 ? 'which.names' : 'which.name', { names: words });
}
