import type { SeasonSummary } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { onion } from '../../state/onion.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { BedField } from './BedField.tsx';
import { GrowingFields } from './GrowingFields.tsx';
import { InBed } from './InBed.tsx';
import { OnionFields } from './OnionFields.tsx';
import { Spacing } from './Spacing.tsx';

/** The plan in a line, and folded under it all that can be said of it. */
export function PlanForm({ summary }: { summary: SeasonSummary }) {
  const { say, dayWithYear } = voice.value;
  const [isOpen, open] = useState(false);
  const { plan } = summary;
  const { name } = onion.value;
  const line = say('app.season.plan.is', {
    onion: name ?? say(`type.${plan.type}`),
    start: say(`start.${plan.start}`),
    date: dayWithYear(plan.startDay),
  });
  return (
    <>
      {notesOf(summary).map((note) => (
        <p key={note} role="status">
          {note}
        </p>
      ))}
      <InBed summary={summary} />
      <details class="plan" onToggle={(event) => open(event.currentTarget.open)}>
        <summary>
          {line} {say('app.season.plan.change')}
        </summary>
        {isOpen && (
          <form class="form" onSubmit={(event) => event.preventDefault()}>
            <OnionFields plan={plan} />
            <BedField />
            <Spacing summary={summary} />
            <GrowingFields plan={plan} />
          </form>
        )}
      </details>
    </>
  );
}

/** What was asked and could not be taken, and what was chosen because nothing was asked. */
function notesOf({ plan }: SeasonSummary): string[] {
  const { say, dayWithYear } = voice.value;
  const { class: printed, start, date, plantOut } = asked.value;
  const { crop, cultivar, own, unknown, starts } = onion.value;
  const notes: string[] = [];
  if (own && crop === null) notes.push(say('app.garden.onion.unused', { name: own.name }));
  if (unknown?.isOtherCrop) notes.push(say('app.season.onion.other', { name: unknown.name }));
  else if (unknown && crop && 'packet' in crop)
    notes.push(say('app.garden.onion.from-link', { name: unknown.name }));
  else if (unknown) {
    const kind = printed === null ? 'none' : say(`class.${printed}`);
    notes.push(say('app.season.onion.unknown', { name: unknown.name, kind }));
  }
  if (start !== null && cultivar && !starts.includes(start)) {
    notes.push(
      say('app.season.start.not-had', { name: cultivar.name, start: say(`app.season.start.${start}`) }),
    );
  } else if (crop === null || start === null || date === null) notes.push(say('app.season.chosen'));
  if (plantOut !== null && plan.start === 'raised-seedlings' && plan.plantOutDay === null)
    notes.push(say('app.season.plant-out.unused', { date: dayWithYear(plantOut) }));
  return notes;
}
