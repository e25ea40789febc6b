import { choicesHereFirst, namedOf } from '@neckfall/answers';
import { useMemo, useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fault } from '../../controls/Fault.tsx';
import { country, placeName, site } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { BareOnions } from './BareOnions.tsx';
import { bestOf } from './best-of.ts';
import { FirstLook } from './FirstLook.tsx';
import { ListLead, ListOnward } from './ListLead.tsx';
import { ListRest } from './ListRest.tsx';
import { Narrow } from './Narrow.tsx';
import { Sections } from './Sections.tsx';
import { SetsUsed } from './SetsUsed.tsx';
import { useListAdvice, usePlaceAdvice } from './use-advice.ts';
import { useAllKinds } from './use-all-kinds.ts';
import { grownOf, useGrown } from './use-grown.ts';
import { wantedOf } from './wanted.ts';

/** What can be had here, the best first. */
export function List() {
  const { onlyClass, colour, keeps, mild, onlyStart, have } = asked.value;
  const filters = { onlyClass, colour, keeps, mild, onlyStart, have };
  const filterKey = JSON.stringify(filters);
  const all = useAllKinds();
  const wanted = useMemo(() => wantedOf(filters, all.own ?? []), [filterKey, all.own]);
  const placeKey = all.key;
  /** The place whose poor kinds are shown too. */
  const [whole, showWhole] = useState<string | null>(null);
  const growing = useGrown(placeKey, () => ({
    site: site.value!,
    kinds: all.kinds,
    firstDay: today.value,
    options: startOptions.value,
  }));
  const { seasons } = growing;
  const rankKey = seasons && wanted.kinds.length > 0 ? `${placeKey} ${filterKey}` : null;
  const ranked = useAnswer(rankKey, () =>
    ask('whichRank', { site: site.value!, grown: grownOf(wanted.kinds, seasons!) }),
  );
  const isAll = Object.values(filters).every((filter) => filter === null);
  const ofPlace = usePlaceAdvice(isAll ? placeKey : null);
  const named = ofPlace.answer && namedOf(ofPlace.answer).summary.plan;
  const isNone = wanted.kinds.length === 0;
  const choices = useMemo(
    () => (isNone ? null : ranked.answer && choicesHereFirst(ranked.answer, country.value, named)),
    [isNone, ranked.answer, country.value, named],
  );
  const ofList = useListAdvice(isAll ? null : rankKey, ranked.isFresh ? choices : null);
  const found = isAll ? ofPlace : ofList;
  const advice = found.answer;
  const failed = all.failed ?? growing.failed ?? ranked.failed ?? found.failed;
  if (failed !== null) return <Fault reason={failed} />;
  const isRanking = rankKey !== null && !(ranked.isFresh && advice);
  const isWaiting = !isNone && (growing.state === 'at-work' || isRanking);
  const isWhole = whole !== null && whole === placeKey;
  const shown = choices && (isWhole ? choices : bestOf(choices));
  return (
    <div class={isWaiting && choices ? 'waiting' : ''} data-waiting={isWaiting ? true : undefined}>
      <InTurn>
        <div key="spread" class="spread">
          <InTurn>
            <div key="said" class="said">
              {choices ? (
                <ListLead choices={choices} advice={advice} isAll={isAll} />
              ) : (
                <h1>{voice.value.say('app.which.title', { place: placeName.value })}</h1>
              )}
            </div>
            <div key="seen" class="seen">
              {shown ? (
                <Sections choices={shown} />
              ) : (
                !isNone && <FirstLook growing={growing} wanted={wanted} />
              )}
            </div>
            <div key="rest" class="rest">
              {choices && <ListOnward key="onward" choices={choices} advice={advice} isAll={isAll} />}
              <Narrow key="narrow" filters={filters} wanted={wanted} />
              <BareOnions key="bare" />
              <SetsUsed key="sets" choices={choices} />
            </div>
          </InTurn>
        </div>
        {choices && shown && seasons && (
          <ListRest
            key={placeKey}
            choices={choices}
            shown={shown}
            seasons={seasons}
            wanted={wanted}
            onWhole={(isWhole) => showWhole(isWhole ? placeKey : null)}
          />
        )}
      </InTurn>
    </div>
  );
}
