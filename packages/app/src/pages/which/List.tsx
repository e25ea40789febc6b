import {
  alikeSentence,
  choiceWhy,
  namesOf,
  practiceAssumptions,
  rankingSentence,
  whichHeadline,
  worthShowing,
} from '@neckfall/answers';
import { type Choice, groupKinds } from '@neckfall/engine';
import { useMemo, useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Cautions } from '../../controls/Cautions.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { InTurn } from '../../controls/InTurn.tsx';
import { placeName, practice, site, siteKey } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { Beside } from './Beside.tsx';
import { FirstLook } from './FirstLook.tsx';
import { Kinds } from './Kinds.tsx';
import { Narrow } from './Narrow.tsx';
import { Sections } from './Sections.tsx';
import { grownOf, type Seasons, useGrown } from './use-grown.ts';
import { allKinds, wantedOf } from './wanted.ts';

/** As many as the command line names. */
const fewest = 20;
const namesAhead = 6;

/** What can be had here, the best first. */
export function List() {
  const { class: printed, colour, keeps, mild, start, have } = asked.value;
  const filters = { class: printed, colour, keeps, mild, start, have };
  const filterKey = JSON.stringify(filters);
  const wanted = useMemo(() => wantedOf(filters), [filterKey]);
  const placeKey = siteKey.value && JSON.stringify([siteKey.value, practice.value, today.value]);
  const growing = useGrown(placeKey, () => ({
    site: site.value!,
    kinds: allKinds(),
    firstDay: today.value,
    options: practice.value,
  }));
  const { seasons } = growing;
  const rankKey = seasons && wanted.kinds.length > 0 ? `${placeKey} ${filterKey}` : null;
  const ranked = useAnswer(rankKey, () =>
    ask('whichRank', { site: site.value!, grown: grownOf(wanted.kinds, seasons!) }),
  );
  const failed = growing.failed ?? ranked.failed;
  if (failed !== null) return <Fault reason={failed} />;
  const isWaiting = growing.state === 'at-work' || (rankKey !== null && !ranked.isFresh);
  if (wanted.kinds.length === 0 || !ranked.answer || !seasons) {
    return (
      <div data-waiting={isWaiting && wanted.kinds.length > 0 ? true : undefined}>
        <FirstLook growing={growing} wanted={wanted} filters={filters} />
      </div>
    );
  }
  const choices = ranked.answer;
  return (
    <div class={ranked.isFresh ? '' : 'waiting'} data-waiting={isWaiting ? true : undefined}>
      <Answer key={placeKey} choices={choices} seasons={seasons} wanted={wanted} filters={filters} />
    </div>
  );
}

type AnswerProps = {
  choices: readonly Choice[];
  seasons: Seasons;
  wanted: ReturnType<typeof wantedOf>;
  filters: Parameters<typeof wantedOf>[0];
};

function Answer({ choices, seasons, wanted, filters }: AnswerProps) {
  const [isWhole, showWhole] = useState(false);
  const speaker = voice.value;
  const { say, day } = speaker;
  const best = worthShowing(choices.slice(0, fewest));
  const shown = isWhole ? choices : best;
  const alike = alikeSentence(shown, speaker);
  const assumed = [
    say('which.assumed-catalogue', { count: wanted.names, kinds: wanted.kinds.length }),
    say('which.assumed-day', { date: day(today.value) }),
    ...practiceOf(shown),
    rankingSentence(speaker),
    say('cultivars.assumed.keeps'),
    say('cultivars.assumed.memory'),
  ];
  return (
    <InTurn>
      <div>
        <h1 class="answer">{whichHeadline(choices[0], placeName.value, speaker)}</h1>
        <p class="because">
          {say(choices[0].kind.names.length > 1 ? 'which.names' : 'which.name', {
            names: namesOf(choices[0], speaker, namesAhead),
          })}{' '}
          {choiceWhy(choices[0], speaker)}
        </p>
        {alike !== null && <p>{alike}</p>}
      </div>
      <Narrow filters={filters} wanted={wanted} />
      <Sections choices={shown} />
      <Beside seasons={seasons} />
      <Kinds choices={shown} />
      {choices.length > best.length && (
        <p>
          <button type="button" onClick={() => showWhole(!isWhole)}>
            {isWhole ? say('app.which.show-fewer') : say('app.which.show-all', { count: choices.length })}
          </button>
        </p>
      )}
      <Cautions
        of={['app.caution.sets', 'app.caution.bought', 'app.caution.treated', 'app.caution.promise']}
      />
      <HowWeKnow assumed={assumed} />
    </InTurn>
  );

  /** For every way of starting that is shown, each sentence once. */
  function practiceOf(all: readonly Choice[]): string[] {
    const sentences = groupKinds(all).flatMap(({ choices: [{ summary }] }) =>
      practiceAssumptions(summary.plan, speaker),
    );
    return [...new Set(sentences)];
  }
}
