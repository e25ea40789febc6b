import {
  cultivarAssumption,
  practiceAssumptions,
  rescueSentences,
  storeName,
  symptomLabel,
  whyCautionSentences,
  whyLead,
} from '@neckfall/answers';
import type { Plan, WhyAnswer as Told } from '@neckfall/engine';
import type { ComponentChildren } from 'preact';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { household, kitchenSaid } from '../../state/kitchen.ts';
import { onion } from '../../state/onion.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { weatherGrounds } from '../../state/weather-grounds.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { WhyAhead } from '../../worker/why-ahead.ts';
import { Causes } from './Causes.tsx';
import { NextYear } from './NextYear.tsx';
import { Questions } from './Questions.tsx';
import { isOfStore, isStoreSaid } from './use-why.ts';
import { takenFor } from './why-crop.ts';

type Props = {
  ahead: WhyAhead;
  answer: Told;
  /** The crop in a line. */
  line: ComponentChildren;
  onChange: () => void;
};

/** The likeliest cause, what can still be done, all causes, one question, next year. */
export function WhyAnswer({ ahead, answer, line, onChange }: Props) {
  const { plan } = ahead;
  const speaker = voice.value;
  const { say } = speaker;
  const { symptoms } = answer.rescue;
  const inStore = symptoms.some(isOfStore);
  return (
    <InTurn>
      <div class="why-head">
        <AnswerHeading text={whyLead(answer, speaker)} />
        <section class="saw" aria-label={say('app.why.saw')}>
          <ul>
            {symptoms.map((symptom) => (
              <li key={symptom}>{symptomLabel(symptom, speaker)}</li>
            ))}
          </ul>
          <button type="button" class="plain" onClick={onChange}>
            {say('app.why.saw.change')}
          </button>
        </section>
        {line}
      </div>
      <div class="why-spread">
        <InTurn>
          <section class="rescue" aria-labelledby="rescue">
            <h2 id="rescue">{say('app.why.rescue')}</h2>
            <ul class="today">
              {rescueSentences(answer, speaker).map((sentence, at) => (
                <li key={sentence}>
                  {symptoms.length > 1 && at < symptoms.length && (
                    <strong>{symptomLabel(symptoms[at], speaker)}: </strong>
                  )}
                  {sentence}
                </li>
              ))}
            </ul>
            <h3>{say('app.cautions')}</h3>
            <ul class="why-care">
              {whyCautionSentences(answer, speaker).map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </section>
          <Causes answer={answer} />
          <div class="after">
            <Questions answer={answer} />
            <NextYear ahead={ahead} answer={answer} />
          </div>
        </InTurn>
      </div>
      <HowWeKnow assumed={assumed(plan, answer, inStore)} />
      <AnswerFoot shown={{ ...takenFor(plan), ...(inStore && { store: kitchenSaid.value.store }) }} />
    </InTurn>
  );
}

function assumed(plan: Plan, { years }: Told, inStore: boolean): string[] {
  const speaker = voice.value;
  const { say } = speaker;
  const { cultivar } = onion.value;
  return [
    say('app.why.how.runs', { years }),
    say('app.why.how.listed'),
    say('app.why.how.unsaid'),
    ...(inStore && asked.value.noticed === null ? [say('app.why.how.noticed')] : []),
    ...(inStore && !isStoreSaid()
      ? [say('app.why.how.store', { store: storeName(household.value.store, speaker) })]
      : []),
    ...(cultivar ? [cultivarAssumption(cultivar, speaker)] : []),
    ...practiceAssumptions(plan, speaker),
    ...weatherGrounds(plan.startDay),
  ];
}
