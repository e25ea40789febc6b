import { useId, useState } from 'preact/hooks';
import { readNumber } from '../address/form-kinds.ts';
import { voice } from '../state/settings.ts';
import { useTyped } from './use-typed.ts';

type Props = {
  label: string;
  hint: string;
  value: number | null;
  min: number;
  max: number;
  digits?: number;
  onValue: (value: number | null) => void;
  /** The same while it is typed: each value that would be taken. */
  onTyped?: (value: number | null) => void;
};

/** A number that may be left empty; taken when the field is left, refused in words. */
export function NumberField({ label, hint, value, min, max, digits = 0, onValue, onTyped }: Props) {
  const { say } = voice.value;
  const id = useId();
  const shown = value === null ? '' : String(Number(value.toFixed(digits)));
  const [text, setText] = useTyped(shown);
  const [bad, setBad] = useState<string | null>(null);

  function read(text: string) {
    const typed = text.trim();
    const number = typed === '' ? null : readNumber(typed);
    const isBad = typed !== '' && (number === null || number < min || number > max);
    return { typed, number, isBad };
  }

  function take(text: string): void {
    const { typed, number, isBad } = read(text);
    setBad(isBad ? typed : null);
    if (!isBad && typed !== shown) onValue(number);
  }

  function type(text: string): void {
    setText(text);
    const { number, isBad } = read(text);
    if (!isBad) onTyped?.(number);
  }

  return (
    <div>
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputmode="decimal"
        autocomplete="off"
        value={text}
        aria-invalid={bad !== null}
        aria-describedby={`${id}-hint`}
        onInput={(event) => type(event.currentTarget.value)}
        onChange={(event) => take(event.currentTarget.value)}
      />
      <p
        id={`${id}-hint`}
        class={bad === null ? 'hint' : 'hint alarm'}
        role={bad === null ? undefined : 'alert'}
      >
        {bad === null ? hint : say('app.ground.bad', { value: bad, min, max })}
      </p>
    </div>
  );
}
