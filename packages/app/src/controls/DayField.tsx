import { formatDay, parseDay } from '@neckfall/engine';
import { useId, useState } from 'preact/hooks';
import { voice } from '../state/settings.ts';
import { useTyped } from './use-typed.ts';

type Props = {
  label: string;
  hint?: string;
  /** Day number; null: none. */
  value: number | null;
  min: number;
  max: number;
  onValue: (day: number | null) => void;
};

/** A day of the calendar; refused in words where it lies outside. */
export function DayField({ label, hint = '', value, min, max, onValue }: Props) {
  const { say, dayWithYear } = voice.value;
  const id = useId();
  const shown = value === null ? '' : formatDay(value);
  const [text, setText] = useTyped(shown);
  const [bad, setBad] = useState<number | null>(null);
  const told = bad ?? (value !== null && (value < min || value > max) ? value : null);

  function take(text: string): void {
    const day = text === '' ? null : parseDay(text);
    const isBad = day !== null && (day < min || day > max);
    setBad(isBad ? day : null);
    if (!isBad && day !== value) onValue(day);
  }

  return (
    <div>
      <label for={id}>{label}</label>
      <input
        id={id}
        type="date"
        value={text}
        min={formatDay(min)}
        max={formatDay(max)}
        aria-invalid={told !== null}
        aria-describedby={`${id}-hint`}
        onInput={(event) => setText(event.currentTarget.value)}
        onChange={(event) => take(event.currentTarget.value)}
      />
      <p
        id={`${id}-hint`}
        class={told === null ? 'hint' : 'hint alarm'}
        role={told === null ? undefined : 'alert'}
      >
        {told === null
          ? hint
          : say('app.season.date.bad', {
              value: dayWithYear(told),
              from: dayWithYear(min),
              to: dayWithYear(max),
            })}
      </p>
    </div>
  );
}
