import { comingDay } from '@neckfall/answers';
import type { ClassAnswer, DateSpread } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { noOnion } from '../../address/no-onion.ts';
import { Fold } from '../../controls/Fold.tsx';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';

/** Each kind of onion in one sentence, with the reason. */
export function Kinds({ classes }: { classes: readonly ClassAnswer[] | null }) {
  const speaker = voice.value;
  const { say, reason } = speaker;
  return (
    <Fold id="kinds" title={say('app.where.kinds')}>
      <dl class="kinds" data-waiting={classes ? undefined : true}>
        {(classes ?? []).map((kind) => (
          <div key={kind.class}>
            <dt>
              <a href={hrefTo('when', { ...noOnion, class: kind.class, start: kind.bestStart, date: null })}>
                {say(`type-head.${kind.type}`)}
              </a>
            </dt>
            <dd>
              {kindSentence(kind, speaker)} {reason(kind.reason)}{' '}
              {!kind.isAtHome && say('app.where.kind.far')}
            </dd>
          </div>
        ))}
      </dl>
    </Fold>
  );
}

function kindSentence({ summary, verdict, gamble, type, bestStart }: ClassAnswer, speaker: Speaker): string {
  const { say, years } = speaker;
  const { onset, neckFall, plan, seasonShares } = summary;
  const outcome = gamble ? 'gamble' : verdict;
  const date = (value: number) => comingDay(value, today.value, speaker);
  const middle = ({ days }: DateSpread) => (days ? date(days.p50) : say('never'));
  // what to buy leads the sentence only where the kind does well
  const buy = outcome === 'good' ? (`buy-head.${bestStart}` as const) : (`buy.${bestStart}` as const);
  return say(`app.where.kind.${outcome}`, {
    buy: say(buy, { type: say(`type.${type}`), date: date(plan.startDay) }),
    onset: middle(onset),
    neckFall: middle(neckFall),
    years: years(gamble ? seasonShares.good : seasonShares[verdict], summary.years),
  });
}
