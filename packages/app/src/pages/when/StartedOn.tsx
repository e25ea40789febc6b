import { civilDate, dayNumber, formatDay, parseDay, type StartMethod, startWays } from '@neckfall/engine';
import { useId, useLayoutEffect, useState } from 'preact/hooks';
import { useTyped } from '../../controls/use-typed.ts';
import { go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';

/** Years around today in which a season can be tried, as on the command line. */
const yearsBack = 2;
const yearsAhead = 5;

/** "I sowed on": a day typed or picked, which opens its season. */
export function StartedOn({ start, day }: { start: StartMethod; day: number }) {
  const { say, dayWithYear } = voice.value;
  const id = useId();
  const shown = formatDay(day);
  const [text, setText] = useTyped(shown);
  const [isBad, setBad] = useState(false);
  useLayoutEffect(() => setBad(false), [shown]);
  const { year, month, day: dayOfMonth } = civilDate(today.value);
  // 28 February where the day is not in that year
  const from = dayNumber(year - yearsBack, month, Math.min(dayOfMonth, 28));
  const to = dayNumber(year + yearsAhead, month, Math.min(dayOfMonth, 28));

  function isTaken(value: string): boolean {
    const typed = parseDay(value);
    if (typed === null || typed < from || typed > to) return false;
    if (typed !== day) go({ date: typed });
    return true;
  }

  const isSown = startWays[start].from === 'seed';
  return (
    <div>
      <label for={id}>{say(isSown ? 'app.when.date.sown' : 'app.when.date.planted')}</label>
      <input
        id={id}
        type="date"
        value={text}
        min={formatDay(from)}
        max={formatDay(to)}
        aria-invalid={isBad}
        aria-describedby={`${id}-hint`}
        onInput={(event) => {
          // a year half typed is a day long ago: that is told when the field is left
          setText(event.currentTarget.value);
          if (isTaken(event.currentTarget.value)) setBad(false);
        }}
        onBlur={(event) => setBad(!isTaken(event.currentTarget.value))}
      />
      <p id={`${id}-hint`} class={isBad ? 'hint alarm' : 'hint'} role={isBad ? 'alert' : undefined}>
        {isBad
          ? say('app.when.date.bad', { from: dayWithYear(from), to: dayWithYear(to) })
          : say('app.when.date.hint')}
      </p>
    </div>
  );
}
