import { monthsOf, todaySentence, whereHeadline } from '@neckfall/answers';
import { formatDay } from '@neckfall/engine';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
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
  if (failed !== null) return <Fault reason={failed} />;
  if (!answer) {
    return (
      <>
        <h1>{placeName.value}</h1>
        <Working />
      </>
    );
  }
  return (
    <div class={isFresh ? '' : 'waiting'} data-waiting={isFresh ? undefined : true}>
      <InTurn>
        <Lead reply={answer} />
        <Later load={loadYear} own={{ picture: answer.picture, answer: answer.answer }} />
        <Ground />
        <Kinds answer={answer.answer} />
        <Winter facts={answer.facts} />
        <Months facts={answer.facts} />
        <FrostLines facts={answer.facts} />
        <Cautions of={['app.caution.bought', 'app.caution.treated', 'app.caution.promise']} />
        <HowWeKnow plan={answer.answer.classes[0].summary.plan} />
      </InTurn>
    </div>
  );
}

/** The answer in words, and where to go from it. */
function Lead({ reply: { answer, facts } }: { reply: WhereReply }) {
  const speaker = voice.value;
  const { say, reason, day } = speaker;
  const [best] = answer.classes;
  const { plan } = best.summary;
  const chosen = { ...noOnion, class: best.class, start: best.bestStart, plantOut: null } as const;
  const tropics = tropicsSentence(facts.sunUpH, monthsOf(facts), speaker);
  return (
    <>
      <h1 class="answer">{whereHeadline(best, placeName.value, speaker)}</h1>
      {tropics !== null && <p class="because">{tropics}</p>}
      <p class="because">{reason(best.reason)}</p>
      <p class="today">
        {say('today.line', { date: day(today.value), sentence: todaySentence(answer, speaker) })}
      </p>
      <nav aria-label={say('app.where.next')} data-best={formatDay(plan.startDay)}>
        <ul class="onward">
          <li>
            <a href={hrefTo('which')}>{say('app.where.next.which')}</a>
          </li>
          <li>
            <a href={hrefTo('when', { ...chosen, date: null })}>{say('app.where.next.when')}</a>
          </li>
          <li>
            <a href={hrefTo('season', { ...chosen, date: plan.startDay })}>{say('app.where.next.season')}</a>
          </li>
        </ul>
      </nav>
    </>
  );
}
