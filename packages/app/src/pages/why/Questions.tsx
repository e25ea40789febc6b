import { answerLabel, questionText, whyLead } from '@neckfall/answers';
import {
  type AnswerOf,
  causeKinds,
  mostQuestions,
  passedOver,
  type Question,
  questionAnswers,
  type WhyAnswer,
} from '@neckfall/engine';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { Asking, Given } from './asking.ts';
import { useCropQuestions } from './use-crop-questions.ts';

/** The one question that would tell most, and what was answered so far, which can be taken back. */
export function Questions({ answer }: { answer: WhyAnswer }) {
  const { say } = voice.value;
  const part = useRef<HTMLElement>(null);
  const crop = useCropQuestions();
  const given = [...crop.given, ...answersGiven()];
  const count = given.length + crop.passed;
  const before = useRef(count);
  const isMoved = useRef(false);
  if (before.current !== count) isMoved.current = true;

  // the button that was pressed is gone: go on from the part
  useLayoutEffect(() => {
    if (before.current !== count) part.current?.focus({ preventScroll: true });
    before.current = count;
  }, [count]);

  const left = mostQuestions - count;
  const asking = askingOf(answer.ask);
  // what was grown tells nothing of birds and mould
  const ask = left > 0 ? (hangsOnCrop(answer) ? (crop.ask ?? asking) : asking) : null;
  if (ask === null && given.length === 0) return null;
  return (
    <section class="ask" ref={part} tabIndex={-1} aria-labelledby="ask">
      <h2 id="ask">{say('app.why.ask')}</h2>
      <p role="status" class="hint">
        {isMoved.current && say('app.why.anew', { answer: whyLead(answer, voice.value) })}
      </p>
      {ask === null ? <p>{say('app.why.ask.done')}</p> : <Ask asking={ask} left={left - 1} />}
      {given.length > 0 && (
        <>
          <h3>{say('app.why.answered')}</h3>
          <ul>
            {given.map((one) => (
              <li key={one.question}>
                {say('app.why.answered.is', { question: one.question, answer: one.answer })}{' '}
                <button
                  type="button"
                  class="plain"
                  aria-label={say('app.why.take-back-of', { question: one.question })}
                  onClick={one.onTakeBack}
                >
                  {say('app.why.take-back')}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function Ask({ asking, left }: { asking: Asking; left: number }) {
  return (
    <fieldset>
      <legend>{asking.question}</legend>
      <div class="row">
        {asking.answers.map(({ label, onPress }) => (
          <button key={label} type="button" onClick={onPress}>
            {label}
          </button>
        ))}
      </div>
      <p class="hint">{voice.value.say('app.why.ask.left', { left })}</p>
    </fieldset>
  );
}

/** From so much of its chance on a cause that no run can know leaves nothing to the crop, 0…1. */
const mostlySeen = 0.5;

function hangsOnCrop({ causes }: WhyAnswer): boolean {
  const seen = causes.filter(({ cause }) => causeKinds[cause] === 'seen');
  return seen.reduce((sum, { probability }) => sum + probability, 0) < mostlySeen;
}

type Answered = [Question, AnswerOf | typeof passedOver];

function askingOf(question: Question | null): Asking | null {
  if (question === null) return null;
  const own: readonly AnswerOf[] = questionAnswers[question];
  return {
    question: questionText(question, voice.value),
    answers: [...own, passedOver].map((answer) => ({
      label: labelOf(question, answer as Answered[1]),
      onPress: () => go({ answers: { ...asked.value.answers, [question]: answer } }),
    })),
  };
}

function answersGiven(): Given[] {
  const all = Object.entries(asked.value.answers ?? {}) as Answered[];
  return all.map(([question, answer]) => ({
    question: questionText(question, voice.value),
    answer: labelOf(question, answer),
    onTakeBack() {
      const others = all.filter(([other]) => other !== question);
      go({ answers: others.length > 0 ? Object.fromEntries(others) : null });
    },
  }));
}

function labelOf(question: Question, answer: Answered[1]): string {
  // each is an answer of its question
  return answerLabel(question, answer as AnswerOf<typeof question>, voice.value);
}
