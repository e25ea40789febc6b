import { startsYearDays } from '@neckfall/answers';
import { type WhenAnswer, weekOf } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { voice } from '../../state/settings.ts';

type Props = { answer: WhenAnswer; firstDay: number; day: number; onDay: (day: number) => void };

const weekDays = 7;

/** The start as a slider: arrows move it by days, Page Up and Page Down by weeks, Home and End to the ends. */
export function StartSlider({ answer, firstDay, day, onDay }: Props) {
  const speaker = voice.value;
  const lastDay = firstDay + startsYearDays - 1;
  const move = (event: KeyboardEvent & { currentTarget: HTMLInputElement }) => {
    const by = event.key === 'PageUp' ? weekDays : event.key === 'PageDown' ? -weekDays : 0;
    if (by === 0) return;
    event.preventDefault();
    // from where the slider stands, which a quick hand moves before the page has followed
    const slider = event.currentTarget;
    slider.valueAsNumber = Math.min(lastDay, Math.max(firstDay, slider.valueAsNumber + by));
    onDay(slider.valueAsNumber);
  };
  return (
    <label class="start-slider">
      <span class="unseen">{speaker.say('app.when.slider')}</span>
      <input
        type="range"
        min={firstDay}
        max={lastDay}
        step={1}
        value={day}
        aria-valuetext={valueText(answer, day, speaker)}
        onKeyDown={move}
        onInput={(event) => onDay(event.currentTarget.valueAsNumber)}
      />
    </label>
  );
}

/** What the week of a day comes to. */
function valueText({ starts }: WhenAnswer, day: number, speaker: Speaker): string {
  const { say, years } = speaker;
  const { hindrance, summary } = starts[weekOf(day)];
  if (hindrance !== null)
    return say('app.when.slider.hindered', { date: speaker.day(day), what: say(`when.${hindrance}`) });
  const { outcome, gamble, seasonShares, years: tried } = summary;
  return say('app.when.slider.value', {
    date: speaker.day(day),
    what: say(gamble ? 'when.edge-gamble' : `verdict.${outcome}`),
    years: years(gamble ? seasonShares.good : seasonShares[outcome], tried),
  });
}
