import { isInStartsYear, type PlaceYear, startsYearDays, startsYearFirst } from '@neckfall/answers';
import type { WhenAnswer } from '@neckfall/engine';
import { useRef } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { site, siteKey } from '../../state/place.ts';
import { today } from '../../state/today.ts';

/** The year of starts around today, or around a day that is not in it; it stands still while a start is moved. */
export function useShownYear(answer: WhenAnswer | null, day: number): PlaceYear | null {
  const shown = useRef<{ answer: WhenAnswer | null; firstDay: number } | null>(null);
  if (answer && (shown.current?.answer !== answer || !isInStartsYear(shown.current.firstDay, day))) {
    const around = startsYearFirst(answer, today.value);
    shown.current = { answer, firstDay: isInStartsYear(around, day) ? around : startsYearFirst(answer, day) };
  }
  const firstDay = shown.current?.firstDay ?? null;
  const key = firstDay === null ? null : JSON.stringify([siteKey.value, firstDay]);
  const known = useAnswer(key, () =>
    ask('whenYear', { site: site.value!, firstDay: firstDay!, days: startsYearDays }),
  );
  return known.answer;
}
