import { choiceWhy, elsewhereSentence, keepingWords, setsWarning } from '@neckfall/answers';
import type { Choice, KindGroup } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { onwardTo } from '../../state/onion-hrefs.ts';
import { voice } from '../../state/settings.ts';
import { BesideButton } from './BesideButton.tsx';
import { isWhereCameFrom } from './came-from.ts';
import { Names } from './Names.tsx';
import { Onward } from './Onward.tsx';
import { shopsOf } from './shops-of.ts';
import { startDayWords } from './start-day.ts';

type Props = {
  group: KindGroup;
  /** All choices of the list, also those that are not shown. */
  all: readonly Choice[];
};

/** One kind at its best start: what comes of it and why, then the names inside it. */
export function KindText({ group: { type, start, choices }, all }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const [best, ...others] = choices;
  const [name] = best.kind.names;
  const elsewhere = elsewhereSentence(best, all, shopsOf.value, speaker);
  const flowers = setsWarning(choices, speaker);
  const more = others.reduce((sum, { kind }) => sum + kind.names.length, 0);
  return (
    <article class="kind" data-type={type} data-start={start}>
      <h4>{say(`crop-kind.${start}`, { type: say(`type-head.${type}`) })}</h4>
      {isWhereCameFrom({ type, start }) && <p class="came-from">{say('app.which.came.this')}</p>}
      <p>{kindSentence(best, speaker)}</p>
      <p>{choiceWhy(best, speaker)}</p>
      {flowers !== null && <p class="heed">{flowers}</p>}
      <Names choice={best} />
      {elsewhere !== null && <p>{elsewhere}</p>}
      {others.length > 0 && (
        <details>
          <summary>{say('app.which.more-names', { count: more })}</summary>
          <ul>
            {others.map((choice) => (
              <li key={choice.kind.names[0]}>
                <Names choice={choice} />
              </li>
            ))}
          </ul>
        </details>
      )}
      <p class="onward">
        <Onward onward={onwardTo(name, start, best.summary.plan.startDay)} name={name} start={start} />
        <BesideButton name={name} start={start} />
      </p>
    </article>
  );
}

function kindSentence(choice: Choice, speaker: Speaker): string {
  const { say, day, years, plants } = speaker;
  const { kind, summary } = choice;
  const { neckFall, seasonShares, boltedPlantsShare, outcome, plan } = summary;
  const date = startDayWords(plan.startDay);
  const values = {
    buy: say(`buy-head.${kind.start}`, { type: say(`type.${kind.type}`), date }),
    fall: neckFall.days ? day(neckFall.days.p50) : 'never',
    plants: plants(boltedPlantsShare?.p50 ?? 0),
    keeps: keepingWords(choice, speaker),
  };
  if (neckFall.days && outcome === 'good')
    return say('app.which.kind.good', { ...values, years: years(seasonShares.good, summary.years) });
  return say('app.which.kind.poor', {
    ...values,
    comes: say(`season.share.${outcome}`, { years: years(seasonShares[outcome], summary.years) }),
    good: years(seasonShares.good, summary.years),
  });
}
