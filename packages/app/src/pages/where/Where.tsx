import {
  bestOfYearSentence,
  districtAssumption,
  monthsOf,
  namedOf,
  sizesAssumption,
  spanSentence,
  todaySentence,
  tropicsSentence,
  whereHeadline,
} from '@neckfall/answers';
import type { ClassAnswer, TodayAnswer } from '@neckfall/engine';
import { noOnion } from '../../address/no-onion.ts';
import { ask, askLong } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { AnswerHeading, HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { Cautions } from '../../controls/Cautions.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { Later } from '../../controls/Later.tsx';
import { Working } from '../../controls/Working.tsx';
import { place, placeName, site, siteKey } from '../../state/place.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { WhereReply } from '../../worker/where.ts';
import { FrostLines } from './FrostLines.tsx';
import { Ground } from './Ground.tsx';
import { Kinds } from './Kinds.tsx';
import { Months } from './Months.tsx';
import { Winter } from './Winter.tsx';

const loadYear = () => import('./YearFigure.tsx').then(({ YearFigure }) => YearFigure);

/** Which onion to buy here, when to start it, and what is still in time today. */
export function Where() {
  const ground = site.value;
  const options = startOptions.value;
  const day = today.value;
  const key = siteKey.value && JSON.stringify([siteKey.value, options, day]);
  const { answer, isFresh, failed } = useAnswer(key, () =>
    ask('where', { site: ground!, today: day, options }),
  );
  const kinds = useAnswer(key, () => ask('whereClasses', { site: ground!, today: day, options }));
  // worked out beside the rest, on a thread of its own
  const starts = useAnswer(key, () => askLong('whereToday', { site: ground!, today: day, options }));
  if (failed !== null) return <Fault reason={failed} />;
  if (!answer) {
    return (
      <>
        <HeadingToCome />
        <Working />
      </>
    );
  }
  return (
    <div class={isFresh ? '' : 'waiting'} data-waiting={isFresh ? undefined : true}>
      <InTurn>
        <div class="spread">
          <InTurn>
            <div class="said">
              <AnswerHeading text={whereHeadline(answer, placeName.value, day, voice.value)} />
              <Today
                classes={kinds.isFresh ? kinds.answer : null}
                starts={starts.isFresh ? starts.answer : null}
              />
            </div>
            <div class="seen">
              <Later load={loadYear} own={{ picture: answer.picture, best: namedOf(answer) }} />
            </div>
            <div class="rest">
              <Lead reply={answer} />
              <Ground />
            </div>
          </InTurn>
        </div>
        <div class="pair">
          <Winter facts={answer.facts} />
          <Cautions of={['app.caution.bought', 'app.caution.treated', 'app.caution.promise']} />
        </div>
        <Kinds classes={kinds.answer} />
        <Months facts={answer.facts} />
        <FrostLines facts={answer.facts} />
        <Grounds named={namedOf(answer)} />
        <AnswerFoot />
      </InTurn>
    </div>
  );
}

function Grounds({ named: { summary } }: { named: ClassAnswer }) {
  const speaker = voice.value;
  return (
    <HowWeKnow
      assumed={[
        ...districtAssumption(place.value?.practice ?? [], speaker),
        sizesAssumption(summary.plan.water, speaker),
      ]}
      plan={summary.plan}
      span={spanSentence(summary, 'lead', speaker)}
    />
  );
}

/** Null: still being worked out. */
type TodayProps = { classes: readonly ClassAnswer[] | null; starts: readonly TodayAnswer[] | null };

/** Why, and where to go from the answer. */
function Lead({ reply }: { reply: WhereReply }) {
  const speaker = voice.value;
  const { say, reason } = speaker;
  const { facts } = reply;
  const named = namedOf(reply);
  const { plan } = named.summary;
  const chosen = { ...noOnion, class: named.class, start: named.bestStart, plantOut: null } as const;
  const bestOfYear = bestOfYearSentence(reply, today.value, speaker);
  const tropics = tropicsSentence(facts.sunUpH, monthsOf(facts), speaker);
  return (
    <>
      {tropics !== null && <p class="because">{tropics}</p>}
      <p class="because">{reason(named.reason)}</p>
      {bestOfYear !== null && <p>{bestOfYear}</p>}
      <AnswerLinks
        links={[
          { href: hrefTo('which'), text: say('app.where.next.which') },
          { href: hrefTo('when', { ...chosen, date: null }), text: say('app.where.next.when') },
          {
            href: hrefTo('season', { ...chosen, date: plan.startDay }),
            text: say('app.where.next.season'),
          },
        ]}
      />
    </>
  );
}

/** What is still in time today. */
function Today({ classes, starts }: TodayProps) {
  const speaker = voice.value;
  const { say, day } = speaker;
  return (
    <p class="today" data-waiting={classes && starts ? undefined : true}>
      {say('today.line', {
        date: day(today.value),
        sentence:
          classes && starts
            ? todaySentence({ classes, today: starts }, today.value, speaker)
            : say('app.working'),
      })}
    </p>
  );
}
