import { useEffect, useRef } from 'preact/hooks';
import { voice } from '../../../state/settings.ts';

type Props = { questions: readonly string[]; onYes: () => void; onNo: () => void };

/** What looks odd is asked about, and noted all the same where it is so. */
export function Doubt({ questions, onYes, onNo }: Props) {
  const { say } = voice.value;
  const box = useRef<HTMLFieldSetElement>(null);
  useEffect(() => box.current?.focus(), []);
  return (
    <fieldset ref={box} class="doubt" aria-label={questions.join(' ')} tabIndex={-1}>
      {questions.map((question) => (
        <p key={question}>{question}</p>
      ))}
      <div class="row">
        <button type="button" onClick={onYes}>
          {say('app.seen.odd.yes')}
        </button>
        <button type="button" onClick={onNo}>
          {say('app.seen.odd.no')}
        </button>
      </div>
    </fieldset>
  );
}
