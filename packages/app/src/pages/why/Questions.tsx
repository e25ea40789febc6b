import { answerLabel, questionText, whyLead } from '@neckfall/answers';
import {
  type AnswerOf,
  mostQuestions,
  passedOver,
  type Question,
  questionAnswers,
  type WhyAnswer,
} from '@neckfall/engine';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

type Given = [Question, AnswerOf | typeof passedOver];

/** The one question that would tell most, and what was answered so far, which can be taken back. */
export function Questions({ answer }: { answer: WhyAnswer }) {
  const { say } = voice.value;
  const part = useRef<HTMLElement>(null);
  const [isMoved, move] = useState(false);
  const given = Object.entries(asked.value.answers ?? {}) as Given[];
  const { ask } = answer;

  // the button that was pressed is gone: go on from the part
  useLayoutEffect(() => {
    if (isMoved) part.current?.focus({ preventScroll: true });
  }, [given.length]);

  function tell(answers: Given[]): void {
    move(true);
    go({ answers: answers.length > 0 ? Object.fromEntries(answers) : null });
  }

  if (ask === null && given.length === 0) return null;
  const left = mostQuestions - given.length - 1;
  return (
    <section class="ask" ref={part} tabIndex={-1} aria-labelledby="ask">
      <h2 id="ask">{say('app.why.ask')}</h2>
      <p role="status" class="hint">
        {isMoved && answer.causes.length > 0 && say('app.why.anew', { answer: whyLead(answer, voice.value) })}
      </p>
      {ask === null ? (
        <p>{say('app.why.ask.done')}</p>
      ) : (
        <fieldset>
          <legend>{questionText(ask, voice.value)}</legend>
          <div class="row">
            {answersOf(ask).map((one) => (
              <button key={one} type="button" onClick={() => tell([...given, [ask, one]])}>
                {labelOf(ask, one)}
              </button>
            ))}
          </div>
          <p class="hint">{say('app.why.ask.left', { left })}</p>
        </fieldset>
      )}
      {given.length > 0 && (
        <>
          <h3>{say('app.why.answered')}</h3>
          <ul>
            {given.map(([question, one]) => {
              const words = { question: questionText(question, voice.value), answer: labelOf(question, one) };
              return (
                <li key={question}>
                  {say('app.why.answered.is', words)}{' '}
                  <button
                    type="button"
                    class="plain"
                    aria-label={say('app.why.take-back-of', words)}
                    onClick={() => tell(given.filter(([other]) => other !== question))}
                  >
                    {say('app.why.take-back')}
                  </button>
                </li>
              );
            })}
          </ul>
        </>
      )}
    </section>
  );
}

function answersOf(question: Question): Given[1][] {
  const own: readonly AnswerOf[] = questionAnswers[question];
  return [...own, passedOver];
}

function labelOf(question: Question, answer: Given[1]): string {
  // each is an answer of its question
  return answerLabel(question, answer as AnswerOf<typeof question>, voice.value);
}
