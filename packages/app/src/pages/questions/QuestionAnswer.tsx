import {
  districtAssumption,
  questionAsked,
  questionSaid,
  questionTable,
  sizesAssumption,
} from '@neckfall/answers';
import { type CommonAnswer, seasonsIn } from '@neckfall/engine';
import { DataTable } from '@neckfall/pictures';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { country, place, placeName } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { linksOf } from './links-of.ts';
import { QuestionFigure } from './QuestionFigure.tsx';
import { QuestionList } from './QuestionList.tsx';

/** One question answered: in words, in a picture, and with what speaks for it. */
export function QuestionAnswer({ answer }: { answer: CommonAnswer }) {
  const speaker = voice.value;
  const { say } = speaker;
  const context = { place: placeName.value, today: today.value, country: country.value };
  const { headline, because, cautions } = questionSaid(answer, context, speaker);
  const [first] = seasonsIn(answer);
  return (
    <InTurn>
      <p class="question">{questionAsked(answer.question, speaker)}</p>
      <AnswerHeading text={headline} />
      <div class="questions-spread">
        <div>
          <InTurn>
            <QuestionFigure answer={answer} />
            <div class="because">
              {because.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
            </div>
            <AnswerLinks links={linksOf(answer)} />
            {cautions.length > 0 && (
              <section aria-labelledby="care">
                <h2 id="care">{say('app.cautions')}</h2>
                <ul>
                  {cautions.map((caution) => (
                    <li key={caution}>{caution}</li>
                  ))}
                </ul>
              </section>
            )}
            <ReadFrom answer={answer} />
          </InTurn>
        </div>
        <QuestionList />
      </div>
      <HowWeKnow
        assumed={[
          ...districtAssumption(place.value?.practice ?? [], speaker),
          ...(first ? [sizesAssumption(first.summary.plan.water, speaker)] : []),
        ]}
        plan={first?.summary.plan ?? null}
      />
      <AnswerFoot shown={{ shows: answer.question }} />
    </InTurn>
  );
}

/** The seasons behind it in full, as the command line has them. */
function ReadFrom({ answer }: { answer: CommonAnswer }) {
  const table = questionTable(answer, today.value, voice.value);
  if (table.rows.length === 0) return null;
  return (
    <details>
      <summary>{table.caption}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
      <section class="scroll" aria-label={table.caption} tabIndex={0}>
        <DataTable {...table} />
      </section>
    </details>
  );
}
