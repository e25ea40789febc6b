import type { Symptom } from '@neckfall/engine';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import '../../look/why.css';
import { CropLine } from './CropLine.tsx';
import { SymptomPicker } from './SymptomPicker.tsx';
import { isOfStore, useWhy } from './use-why.ts';
import { WhyAnswer } from './WhyAnswer.tsx';

const none: readonly Symptom[] = [];

/** What went wrong: what was seen is pressed first, then its likeliest causes are told. */
export function Why() {
  const { say } = voice.value;
  const seen = asked.value.symptoms ?? none;
  const [choosing, choose] = useState<readonly Symptom[] | null>(null);
  const chosen = choosing ?? seen;
  const isChoosing = choosing !== null || seen.length === 0;
  // the answer is worked out while more is pressed
  const { answer: ahead, isFresh, failed } = useWhy(chosen);
  useHeadOfPage(isChoosing);
  if (failed !== null) return <Fault reason={failed} />;

  function see(): void {
    go({ symptoms: chosen });
    choose(null);
  }

  const line = ahead && (
    <CropLine plan={ahead.plan} neckFall={ahead.neckFall} inStore={chosen.some(isOfStore)} />
  );
  return (
    <div class={isFresh || isChoosing ? 'why' : 'why waiting'} data-waiting={isFresh ? undefined : true}>
      {isChoosing ? (
        <>
          <h1>{say('app.why.title')}</h1>
          <p>{say('app.why.lead')}</p>
          <SymptomPicker chosen={chosen} onChoose={choose} onSee={see} line={line} />
        </>
      ) : ahead?.answer ? (
        <WhyAnswer ahead={ahead} answer={ahead.answer} line={line} onChange={() => choose(seen)} />
      ) : (
        <>
          <HeadingToCome />
          <Working />
        </>
      )}
    </div>
  );
}

/** From the drawings to the answer and back one begins to read at the head, as on another page. */
function useHeadOfPage(isChoosing: boolean): void {
  const before = useRef(isChoosing);
  useLayoutEffect(() => {
    if (before.current === isChoosing) return;
    before.current = isChoosing;
    scrollTo(0, 0);
    document.getElementById('answer')?.focus({ preventScroll: true });
  }, [isChoosing]);
}
