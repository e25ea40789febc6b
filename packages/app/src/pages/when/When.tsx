import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { grownSite, grownSiteKey } from '../../state/grown-site.ts';
import { onion } from '../../state/onion.ts';
import { asked } from '../../state/route.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import { Answer } from './Answer.tsx';
import '../../look/when.css';

/** When to start an onion here: today, this year, and what comes of each start. */
export function When() {
  const { crop, starts } = onion.value;
  const start = starts.find((offered) => offered === asked.value.start) ?? null;
  const isTold = crop !== null && start !== null;
  const key =
    isTold || grownSiteKey.value === null
      ? null
      : JSON.stringify([grownSiteKey.value, startOptions.value, today.value, crop, starts]);
  const choice = useAnswer(key, () =>
    ask('whenChoice', {
      site: grownSite.value!,
      crop,
      starts,
      today: today.value,
      options: startOptions.value,
    }),
  );
  if (choice.failed !== null) return <Fault reason={choice.failed} />;
  if (isTold) return <Answer crop={crop} start={start} isKnown />;
  if (!choice.answer)
    return (
      <>
        <HeadingToCome />
        <Working />
      </>
    );
  return <Answer crop={choice.answer.crop} start={start ?? choice.answer.start} isKnown={choice.isFresh} />;
}
