import { classOfType, type StartMethod } from '@neckfall/engine';
import { useMemo } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Cautions } from '../../controls/Cautions.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { onion } from '../../state/onion.ts';
import { placeName, practice, site, siteKey } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { CropAsked } from '../../worker/crop.ts';
import { Aim } from './Aim.tsx';
import { bestAhead } from './best-ahead.ts';
import { Grounds } from './Grounds.tsx';
import { NowHeading, OtherWays } from './Now.tsx';
import { OnionForm, UnknownOnion } from './OnionForm.tsx';
import { SeasonFrom } from './SeasonFrom.tsx';
import { useMovedDay } from './use-moved-day.ts';
import { useShownYear } from './use-shown-year.ts';
import { YearOfStarts } from './YearOfStarts.tsx';

type Props = {
  crop: CropAsked;
  start: StartMethod;
  /** Whether onion and start are those of the address, and not of the one before. */
  isKnown: boolean;
};

/** All that is said of one onion started one way. */
export function Answer({ crop, start, isKnown }: Props) {
  const { say } = voice.value;
  const { cultivar, starts } = onion.value;
  const options = practice.value;
  const now = today.value;
  const others = starts.filter((other) => other !== start);
  const common = [siteKey.value, options, now, crop];
  const tried = useAnswer(JSON.stringify([common, start]), () =>
    ask('when', { site: site.value!, crop, today: now, plan: { start, ...options } }),
  );
  const ways = useAnswer(others.length > 0 ? JSON.stringify([common, others]) : null, () =>
    ask('whenToday', { site: site.value!, crop, starts: others, today: now, options }),
  );
  const answer = tried.answer?.answer ?? null;
  const best = useMemo(() => answer && bestAhead(answer, now), [answer, now]);
  const [day, onDay] = useMovedDay(asked.value.date ?? best ?? now);
  const year = useShownYear(answer, day);
  if (tried.failed !== null) return <Fault reason={tried.failed} />;
  if (!tried.answer || !answer || !year)
    return (
      <>
        <h1>{placeName.value}</h1>
        <Working />
      </>
    );
  const isFresh = isKnown && tried.isFresh;
  const { plan } = answer.starts[0].summary;
  const { type } = plan;
  const name = cultivar?.name ?? null;
  const words = say(`crop-kind.${plan.start}`, { type: name ?? say(`type.${type}`) });
  return (
    <div class={isFresh ? '' : 'waiting'} data-waiting={isFresh ? undefined : true}>
      <NowHeading now={tried.answer.now} crop={words} />
      <UnknownOnion />
      {others.length > 0 && <OtherWays others={ways.isFresh ? ways.answer : null} />}
      <OnionForm type={type} start={plan.start} day={day} />
      <YearOfStarts
        answer={answer}
        year={year}
        needSunUpH={tried.answer.needSunUpH}
        day={day}
        onDay={onDay}
      />
      <SeasonFrom
        plan={{ ...plan, startDay: day }}
        name={name}
        colour={cultivar?.colour ?? asked.value.colour ?? 'yellow'}
        link={{ ...(onion.value.crop === null ? { class: classOfType[type] } : {}), start, date: day }}
      />
      <Aim answer={answer} name={name} />
      <Cautions of={['app.caution.bought', 'app.caution.treated', 'app.caution.promise']} />
      <Grounds answer={answer} notes={tried.answer.notes} cultivar={cultivar} />
    </div>
  );
}
