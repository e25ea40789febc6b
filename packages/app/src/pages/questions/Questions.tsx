import { questionAsked } from '@neckfall/answers';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { voice } from '../../state/settings.ts';
import '../../look/questions.css';
import { opened } from './asked-question.ts';
import { QuestionAnswer } from './QuestionAnswer.tsx';
import { QuestionList } from './QuestionList.tsx';
import { useCommonAnswer } from './use-common-answer.ts';

/** What people ask a teacher, answered for the place: one question opened, the others a link each. */
export function Questions() {
  const { answer, isFresh, failed } = useCommonAnswer();
  const question = opened.value;
  useHeadOfPage(question);
  if (failed !== null) return <Fault reason={failed} />;
  // an answer to another question is none to this
  if (!answer || answer.question !== question) {
    return (
      <div class="questions" data-waiting>
        <HeadingToCome />
        <p class="question">{questionAsked(question, voice.value)}</p>
        <Working />
        <QuestionList />
      </div>
    );
  }
  return (
    <div class={isFresh ? 'questions' : 'questions waiting'} data-waiting={isFresh ? undefined : true}>
      <QuestionAnswer key={question} answer={answer} />
    </div>
  );
}

/** Another question is read from its head. */
function useHeadOfPage(question: string): void {
  const before = useRef(question);
  useLayoutEffect(() => {
    if (before.current === question) return;
    before.current = question;
    scrollTo(0, 0);
    document.getElementById('answer')?.focus({ preventScroll: true });
  }, [question]);
}
