import { monthsOf, todaySentence, whereHeadline } from '@neckfall/answers';
import type { ClassAnswer, TodayAnswer } from '@neckfall/engine';
import { ask, askLong } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { AnswerHeading, HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { Cautions } from '../../controls/Cautions.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { InTurn } from '../../controls/InTurn.tsx';
import { Later } from '../../controls/Later.tsx';
import { Working } from '../../controls/Working.tsx';
import { noOnion } from '../../state/no-onion.ts';
import { placeName, practice, site, siteKey } from '../../state/place.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { WhereReply } from '../../worker/where.ts';
import { FrostLines } from './FrostLines.tsx';
import { Ground } from './Ground.tsx';
import { Kinds } from './Kinds.tsx';
import { Months } from './Months.tsx';
import { tropicsSentence } from './tropics-sentence.ts';
import { Winter } from './Winter.tsx';

const loadYear = () => import('./YearFigure.tsx').then(({ YearFigure }) => YearFigure);

/** Which onion to buy here, when to start it, and what is still in time today. */
export function Where() {
  const ground = site.value;
  const options = practice.value;
  const day = today.value;
  const key = siteKey.value && JSON.stringify([siteKey.value, options, day]);
  const { answer, isFresh, failed } = useAnswer(key, () =>
    ask('where', { site: ground!, today: day, options }),
  );
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
        <Lead reply={answer} starts={starts.isFresh ? starts.answer : null} />
        <Later load={loadYear} own={{ picture: answer.picture, best: answer.classes[0] }} />
        <Ground />
        <Kinds classes={answer.classes} />
        <Winter facts={answer.facts} />
        <Months facts={answer.facts} />
        <FrostLines facts={answer.facts} />
        <Cautions of={['app.caution.bought', 'app.caution.treated', 'app.caution.promise']} />
        <HowWeKnow plan={answer.classes[0].summary.plan} />
      </InTurn>
    </div>
  );
}

type LeadProps = { reply: WhereReply; starts: readonly TodayAnswer[] | null };

/** The answer in words, and where to go from it. */
function Lead({ reply: { classes, facts }, starts }: LeadProps) {
  const speaker = voice.value;
  const { say, reason } = speaker;
  const [best] = classes;
  const { plan } = best.summary;
  const chosen = { ...noOnion, class: best.class, start: best.bestStart, plantOut: null } as const;
  const tropics = tropicsSentence(facts.sunUpH, monthsOf(facts), speaker);
  return (
    <>
      <AnswerHeading text={whereHeadline(best, placeName.value, today.value, speaker)} />
      <Today classes={classes} starts={starts} />
      {tropics !== null && <p class="because">{tropics}</p>}
      <p class="because">{reason(best.reason)}</p>
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

type TodayProps = { classes: readonly ClassAnswer[]; starts: readonly TodayAnswer[] | null };

/** What is still in time today. */
function Today({ classes, starts }: TodayProps) {
  const speaker = voice.value;
  const { say, day } = speaker;
  return (
    <p class="today" data-waiting={starts === null ? true : undefined}>
      {say('today.line', {
        date: day(today.value),
        sentence: starts
          ? todaySentence({ classes, today: starts }, today.value, speaker)
          : say('app.working'),
      })}
    </p>
  );
}
