import { useId } from 'preact/hooks';
import { readNumber } from '../../../address/form-kinds.ts';
import { useTyped } from '../../../controls/use-typed.ts';
import { voice } from '../../../state/settings.ts';

type Props = {
  question: string;
  hint: string;
  /** In the reader's units, as are the others. */
  value: number | null;
  step: number;
  digits: number;
  min: number;
  max: number;
  onValue: (value: number | null) => void;
};

/** A number by a thumb: one less, one more, or typed between them. */
export function Stepper({ question, hint, value, step, digits, min, max, onValue }: Props) {
  const { say, number } = voice.value;
  const id = useId();
  const shown = value === null ? '' : number(value, digits);
  const [text, setText] = useTyped(shown);
  const typed = text.trim() === '' ? null : readNumber(text);
  const isBad = text.trim() !== '' && (typed === null || typed < min || typed > max);

  function by(change: number): void {
    const next = Math.min(max, Math.max(min, (typed ?? value ?? 0) + change));
    onValue(Number(next.toFixed(digits)));
    setText(number(next, digits));
  }

  function take(text: string): void {
    setText(text);
    const number = readNumber(text);
    if (text.trim() === '') onValue(null);
    else if (number !== null && number >= min && number <= max) onValue(number);
  }

  const button = (change: number) => {
    const label = change < 0 ? `−${number(step, digits)}` : `+${number(step, digits)}`;
    return (
      <button
        type="button"
        aria-label={say('app.seen.step', { by: label, what: question })}
        onClick={() => by(change)}
      >
        {label}
      </button>
    );
  };

  return (
    <div class="stepper">
      <label for={id}>{question}</label>
      <div class="thumbs">
        {button(-step)}
        <input
          id={id}
          type="text"
          inputmode="decimal"
          autocomplete="off"
          value={text}
          aria-invalid={isBad}
          aria-describedby={`${id}-hint`}
          onInput={(event) => take(event.currentTarget.value)}
        />
        {button(step)}
      </div>
      <p id={`${id}-hint`} class={isBad ? 'hint alarm' : 'hint'} role={isBad ? 'alert' : undefined}>
        {isBad ? say('app.ground.bad', { value: text.trim(), min, max }) : hint}
      </p>
    </div>
  );
}
