import { civilDate, type DayNumber, dayNumber, formatDay, type Plan, parseDay } from '@neckfall/engine';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';

/** From the start to the harvest of a crop whose tops never go over, days (common practice, no source). */
const usualDays = 150;
/** No onion is kept for longer, months. */
const longestKept = 12;
const middleOfMonth = 15;

/** The month in which something was seen in store: those from the harvest to today. */
export function NoticedField({ plan, neckFall }: { plan: Plan; neckFall: DayNumber | null }) {
  const { say, monthWithYear } = voice.value;
  const { noticed } = asked.value;
  const months = monthsFrom(neckFall ?? plan.startDay + usualDays, today.value);
  const days = noticed === null || months.includes(noticed) ? months : [noticed, ...months];
  return (
    <ChoiceField
      label={say('app.why.noticed')}
      value={noticed === null ? 'unsaid' : formatDay(noticed)}
      options={[
        { value: 'unsaid', label: say('app.why.noticed.unsaid') },
        ...days.map((day) => {
          const { year, month } = civilDate(day);
          return { value: formatDay(day), label: monthWithYear(year, month) };
        }),
      ]}
      onValue={(value) => go({ noticed: parseDay(value) }, { replace: true })}
    />
  );
}

/** The middle of each month; of the one under way no later than today. */
function monthsFrom(harvest: DayNumber, last: DayNumber): DayNumber[] {
  const { year, month } = civilDate(harvest);
  return Array.from({ length: longestKept + 1 }, (_, at) =>
    dayNumber(year + Math.floor((month - 1 + at) / 12), ((month - 1 + at) % 12) + 1, middleOfMonth),
  )
    .filter((day) => day - middleOfMonth < last)
    .map((day) => Math.min(day, last));
}
