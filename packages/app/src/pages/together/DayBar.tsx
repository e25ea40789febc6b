import { togetherDate } from '@neckfall/answers';
import type { Speaker } from '@neckfall/words';
import { voice } from '../../state/settings.ts';
import { type Drawn, lineOn } from './drawn-lines.ts';
import { movedDay, moveTo } from './moved-day.ts';
import { shownDay } from './shown-day.ts';

const monthDays = 30;

/** The day in words, and a slider for it: arrows move it by days, Page Up and Page Down by months, Home and End to the ends. */
export function DayBar({ drawn }: { drawn: Drawn }) {
  const speaker = voice.value;
  const { firstDay, days } = drawn.axis;
  const lastDay = firstDay + days - 1;
  const day = shownDay(drawn, movedDay.value);
  const move = (event: KeyboardEvent & { currentTarget: HTMLInputElement }) => {
    const by = event.key === 'PageUp' ? monthDays : event.key === 'PageDown' ? -monthDays : 0;
    if (by === 0) return;
    event.preventDefault();
    // from where the slider stands, which a quick hand moves before the page has followed
    const slider = event.currentTarget;
    slider.valueAsNumber = Math.min(lastDay, Math.max(firstDay, slider.valueAsNumber + by));
    moveTo(slider.valueAsNumber);
  };
  return (
    <label class="day-bar">
      <span class="unseen">{speaker.say('app.together.slider')}</span>
      <strong aria-hidden="true">{dateOf(drawn, day, speaker)}</strong>
      <input
        type="range"
        min={firstDay}
        max={lastDay}
        step={1}
        value={day}
        aria-valuetext={dateOf(drawn, day, speaker)}
        onKeyDown={move}
        onInput={(event) => moveTo(event.currentTarget.valueAsNumber)}
      />
    </label>
  );
}

/** The date of a day of the axis, or both dates where halves of the globe have their own. */
export function dateOf({ lines }: Drawn, day: number, speaker: Speaker): string {
  const own = lines.map((line) => ({
    day: lineOn(line, day).day,
    latitudeDeg: line.found.located.latitudeDeg,
  }));
  return togetherDate(own, speaker);
}
