import { type HandoutFacts, handoutOf, placeAssumptions } from '@neckfall/answers';
import { fitSheet, handoutYear, type Sheet } from '@neckfall/pictures';
import { useMemo } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { place, placeName, site, siteKey } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import '../../look/sheet.css';
import { OwnWords } from './OwnWords.tsx';
import { ownSaid } from './own-said.ts';
import { paperSaid } from './paper-said.ts';
import { SheetPreview } from './SheetPreview.tsx';
import { TakeSheet } from './TakeSheet.tsx';
import { useFaces } from './use-faces.ts';

/** One page to hand out for the place, with the teacher's own words on it. */
export function SheetPage() {
  const { say } = voice.value;
  const options = startOptions.value;
  const day = today.value;
  const key = siteKey.value && JSON.stringify([siteKey.value, options, day]);
  const { answer, isFresh, failed } = useAnswer(key, () =>
    ask('handout', { site: site.value!, today: day, options }),
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
    <div class={isFresh ? 'to-hand-out' : 'to-hand-out waiting'} data-waiting={isFresh ? undefined : true}>
      <h1 class="answer">{say('app.sheet', { place: placeName.value })}</h1>
      <p>{say('app.sheet.lead')}</p>
      <TheSheet facts={answer} />
      <p class="hint">{say('app.sheet.command')}</p>
      <AnswerFoot />
    </div>
  );
}

function TheSheet({ facts }: { facts: HandoutFacts }) {
  const measure = useFaces();
  const speaker = voice.value;
  const own = { heading: ownSaid('heading'), note: ownSaid('note') };
  const paper = paperSaid();
  const key = JSON.stringify([own, paper, placeName.value, asked.value.sun]);
  const sheet = useMemo((): Sheet | null => {
    if (measure === null || !place.value || !site.value) return null;
    const settings = {
      warmerC: site.value.warmerC,
      warmerFrom: 'default',
      sunHours: asked.value.sun,
    } as const;
    const assumed = placeAssumptions(place.value, settings, speaker);
    const handout = handoutOf(facts, { place: place.value, label: placeName.value, assumed }, own, speaker);
    return fitSheet(handout, handoutYear(facts, speaker), paper, measure);
  }, [facts, measure, speaker, key]);
  return (
    <>
      <OwnWords />
      {sheet && (
        <>
          <TakeSheet sheet={sheet} />
          <SheetPreview sheet={sheet} />
        </>
      )}
    </>
  );
}
