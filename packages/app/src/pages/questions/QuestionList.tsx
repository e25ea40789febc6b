import { questionAsked } from '@neckfall/answers';
import { commonQuestions } from '@neckfall/engine';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { opened } from './asked-question.ts';

/** The ten questions, each a link that opens its answer. */
export function QuestionList() {
  const speaker = voice.value;
  return (
    <nav class="question-list" aria-labelledby="questions">
      <h2 id="questions">{speaker.say('app.questions.all')}</h2>
      <ol>
        {commonQuestions.map((question) => (
          <li key={question}>
            <a
              href={hrefTo('questions', { shows: question })}
              aria-current={question === opened.value ? 'true' : undefined}
            >
              {questionAsked(question, speaker)}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}
