import { choicesHereFirst, namesOf } from '@neckfall/answers';
import { type Choice, type GrownKind, groupKinds } from '@neckfall/engine';
import { type OnionLook, SectionRow, sectionRowOf } from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fault } from '../../controls/Fault.tsx';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { hrefOfList } from '../../state/onion-hrefs.ts';
import { country, site } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import { lookOf } from './look-of.ts';
import { useAllKinds } from './use-all-kinds.ts';
import { grownOf, useGrown } from './use-grown.ts';
import { allKinds } from './wanted.ts';

type Props = {
  /** The way to start it that is told. */
  own: Choice;
  grown: readonly GrownKind[];
  isFresh: boolean;
  isNamed: boolean;
  look: OnionLook;
};

/** Names said of the best. */
const namesSaid = 4;
function isSurer(best: Choice, own: Choice): boolean {
  return Math.round(10 * best.summary.seasonShares.good) > Math.round(10 * own.summary.seasonShares.good);
}

/** What puts the best before the one in the hand, in numbers that show it. @param isKeepingKnown how long that keeps */
function aheadIn(
  best: Choice,
  own: Choice,
  isKeepingKnown: boolean,
  { say, years, numberRange }: Speaker,
): string {
  const good = ({ summary }: Choice) => years(summary.seasonShares.good, summary.years);
  const keeps = ({ kind }: Choice) => numberRange(...kind.keepsMonths, 1);
  const isKeeper = best.kind.keepsMonths[0] > own.kind.keepsMonths[0];
  const facts = [
    ...(isSurer(best, own)
      ? [say('app.which.packet.surer', { years: good(best), ownYears: good(own) })]
      : []),
    ...(isKeeper
      ? [
          say(isKeepingKnown ? 'app.which.packet.keeps-longer' : 'app.which.packet.keeps', {
            months: keeps(best),
            ownMonths: keeps(own),
          }),
        ]
      : []),
  ];
  if (facts.length === 0) return say('app.which.packet.easier');
  return facts.reduceRight((rest, first) => say('list.parts', { first, rest }));
}

/** The onion in the hand among all that can be had here. */
export function AgainstBest({ own, grown, isFresh, isNamed, look }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  // grown with those of their own, as for the list; ranked among what can be bought
  const all = useAllKinds();
  const placeKey = all.key;
  // what is in the hand comes first
  const growing = useGrown(isFresh ? placeKey : null, () => ({
    site: site.value!,
    kinds: all.kinds,
    firstDay: today.value,
    options: startOptions.value,
  }));
  const { seasons } = growing;
  const rankKey = seasons && isFresh ? JSON.stringify([placeKey, grown.map(({ kind }) => kind)]) : null;
  const ranked = useAnswer(rankKey, () =>
    ask('whichRank', {
      site: site.value!,
      grown: [...grownOf(allKinds([]), seasons!), ...(isNamed ? [] : grown)],
    }),
  );
  const failed = all.failed ?? growing.failed ?? ranked.failed;
  if (failed !== null) return <Fault reason={failed} />;
  if (growing.state === 'stopped') return null;
  if (!ranked.answer || !ranked.isFresh) {
    return (
      <p role="status" data-waiting>
        {say('app.which.packet.comparing')}
      </p>
    );
  }
  const mine = ranked.answer.find(
    ({ kind }) => kind.start === own.kind.start && kind.names.includes(own.kind.names[0]),
  );
  const rest = ranked.answer.filter((choice) => choice !== mine);
  const [{ choices: group }] = groupKinds(choicesHereFirst(rest, country.value));
  const [best] = group;
  // what is started today may do worse than at its best of the year
  const isLevel = mine?.rank === 1 && !isSurer(best, own);
  const nameOf = ({ kind }: Choice) =>
    say('which.kind', { type: say(`type.${kind.type}`), start: say(`start.${kind.start}`) });
  const { picture, table } = sectionRowOf(
    [
      { name: own.kind.names[0], summary: own.summary, look },
      {
        name: say('app.which.packet.best', { name: nameOf(best) }),
        summary: best.summary,
        look: lookOf(best.kind),
      },
    ],
    speaker,
  );
  return (
    <section aria-labelledby="against">
      <h2 id="against">{say('app.which.packet.against')}</h2>
      <p>
        {isLevel
          ? say('app.which.packet.level', { years: own.summary.years })
          : say('app.which.packet.behind', {
              kind: nameOf(best),
              names: namesOf(best, speaker, namesSaid, country.value),
              why: aheadIn(best, own, isNamed || own.kind.keepsFrom === 'cultivar', speaker),
            })}{' '}
        <a href={hrefOfList()}>{say('app.which.way.list')}</a>
      </p>
      {!isLevel && (
        <>
          <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
          <TakePicture
            name="against"
            what={() => say('app.which.packet.against')}
            draw={(width) => <SectionRow width={width} {...picture} />}
            summary={picture.summary}
            table={() => table}
          />
        </>
      )}
    </section>
  );
}
