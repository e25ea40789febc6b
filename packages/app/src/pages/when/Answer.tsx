import { whenHeadline } from '@neckfall/answers';
import { type CropAsked, classOfType, type StartMethod, startWays } from '@neckfall/engine';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { Cautions } from '../../controls/Cautions.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { LearntFrom } from '../../controls/LearntFrom.tsx';
import { Working } from '../../controls/Working.tsx';
import { grownSite, grownSiteKey } from '../../state/grown-site.ts';
import { onion } from '../../state/onion.ts';
import { hrefOfList } from '../../state/onion-hrefs.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { Edges } from './Edges.tsx';
import { Grounds } from './Grounds.tsx';
import { Moving } from './Moving.tsx';
import { NowHeading, OtherWays } from './Now.tsx';
import { UnknownOnion } from './OnionFields.tsx';

type Props = {
  crop: CropAsked;
  start: StartMethod;
  /** Whether onion and start are those of the address, and not of the one before. */
  isKnown: boolean;
};

/** All that is said of one onion started one way. */
export function Answer({ crop, start, isKnown }: Props) {
  const { say, reason } = voice.value;
  const { cultivar, name, starts } = onion.value;
  const options = startOptions.value;
  const now = today.value;
  const others = starts.filter((other) => other !== start);
  const common = [grownSiteKey.value, options, now, crop];
  const tried = useAnswer(JSON.stringify([common, start]), () =>
    ask('when', { site: grownSite.value!, crop, today: now, start, options }),
  );
  const ways = useAnswer(others.length > 0 ? JSON.stringify([common, others]) : null, () =>
    ask('whenToday', { site: grownSite.value!, crop, starts: others, today: now, options }),
  );
  if (tried.failed !== null) return <Fault reason={tried.failed} />;
  if (!tried.answer)
    return (
      <>
        <HeadingToCome />
        <Working />
      </>
    );
  const { answer, now: standing, ahead, type, needSunUpH, notes } = tried.answer;
  const isFresh = isKnown && tried.isFresh;
  const { plan } = answer.starts[0].summary;
  const shown = {
    ...(onion.value.crop === null ? { class: classOfType[plan.type] } : {}),
    start: plan.start,
    date: asked.value.date ?? ahead,
  };
  const words = say(`crop-kind.${plan.start}`, { type: name ?? say(`type.${type}`) });
  return (
    <div class={isFresh ? '' : 'waiting'} data-waiting={isFresh ? undefined : true}>
      <InTurn>
        <Moving
          answer={answer}
          ahead={ahead}
          needSunUpH={needSunUpH}
          name={name}
          said={
            <div class="said">
              <NowHeading now={standing} crop={words} />
              {others.length > 0 && <OtherWays others={ways.isFresh ? ways.answer : null} />}
            </div>
          }
          why={
            <>
              <p class="because">
                {whenHeadline(answer, name, null, voice.value)} {reason(answer.reason)}
              </p>
              <UnknownOnion />
              <LearntFrom />
              <AnswerLinks
                links={[
                  { href: hrefTo('season', shown), text: say('app.when.season') },
                  { href: hrefOfList(), text: say('app.season.onward.which') },
                ]}
              />
            </>
          }
        />
        <Cautions of={cautionsFor(plan.start)} />
        <Edges answer={answer} />
        <Grounds answer={answer} notes={notes} cultivar={cultivar} />
        <AnswerFoot shown={shown} />
      </InTurn>
    </div>
  );
}

function cautionsFor(start: StartMethod): Parameters<typeof Cautions>[0]['of'] {
  const { from } = startWays[start];
  return [
    ...(from === 'seed' ? [] : (['app.caution.bought'] as const)),
    ...(from === 'plants' ? [] : (['app.caution.treated'] as const)),
    'app.caution.promise',
  ];
}
