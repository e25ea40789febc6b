import type { SeasonSummary } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { onion } from '../../state/onion.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { GrowingFields } from './GrowingFields.tsx';
import { OnionFields } from './OnionFields.tsx';

/** The plan in a line, and folded under it all that can be said of it. */
export function PlanForm({ summary }: { summary: SeasonSummary }) {
  const { say, dayWithYear } = voice.value;
  const [isOpen, open] = useState(false);
  const { plan } = summary;
  const { class: printed, start, date } = asked.value;
  const { crop, cultivar, unknown } = onion.value;
  const isChosen = crop === null || start !== plan.start || date === null;
  const line = say('app.season.plan.is', {
    onion: cultivar?.name ?? say(`type.${plan.type}`),
    start: say(`start.${plan.start}`),
    date: dayWithYear(plan.startDay),
  });
  return (
    <>
      {unknown !== null && (
        <p role="status">
          {unknown.isOtherCrop
            ? say('app.season.onion.other', { name: unknown.name })
            : say('app.season.onion.unknown', {
                name: unknown.name,
                kind: printed === null ? 'none' : say(`class.${printed}`),
              })}
        </p>
      )}
      {isChosen && <p role="status">{say('app.season.chosen')}</p>}
      <p class="print-only">
        {line} {say('app.season.printed', { date: dayWithYear(today.value) })}
      </p>
      <details class="plan" onToggle={(event) => open(event.currentTarget.open)}>
        <summary>
          {line} {say('app.season.plan.change')}
        </summary>
        {isOpen && (
          <form class="form" onSubmit={(event) => event.preventDefault()}>
            <OnionFields plan={plan} />
            <GrowingFields plan={plan} />
          </form>
        )}
      </details>
    </>
  );
}
