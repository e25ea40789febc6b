import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { grownSite, grownSiteKey } from '../../state/grown-site.ts';
import { today } from '../../state/today.ts';
import '../../look/season.css';
import { cropAsked } from '../../state/crop-asked.ts';
import { ground } from '../../state/ground.ts';
import { kept } from '../../state/kept.ts';
import { planOptions } from '../../state/plan-asked.ts';
import { marks, seen } from '../../state/planting.ts';
import { SeasonAnswer } from './SeasonAnswer.tsx';

/** One crop: what to do this week, what to see, when it ends and what it comes to. */
export function Season() {
  const crop = cropAsked.value;
  const options = planOptions.value;
  const day = today.value;
  const observed = [...seen.value].reverse();
  const grown = {
    ...crop,
    ...kept.value,
    options,
    today: day,
    seen: observed,
    ground: ground.value,
    marks: marks.value,
  };
  const site = grownSiteKey.value;
  const key = site && JSON.stringify([site, grown]);
  const { answer, isFresh, failed } = useAnswer(key, () =>
    ask('seasonAhead', { site: grownSite.value!, ...grown }),
  );
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
    <div class={isFresh ? 'season' : 'season waiting'} data-waiting={isFresh ? undefined : true}>
      <SeasonAnswer ahead={answer} />
    </div>
  );
}
