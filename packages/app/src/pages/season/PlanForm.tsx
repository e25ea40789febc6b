import type { SeasonSummary } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { GrowingFields } from '../../controls/GrowingFields.tsx';
import { OnionFields } from '../../controls/OnionFields.tsx';
import { onion } from '../../state/onion.ts';
import { planNotes } from '../../state/plan-notes.ts';
import { voice } from '../../state/settings.ts';
import { BedField } from './BedField.tsx';
import { InBed } from './InBed.tsx';
import { pinned } from './pinned.ts';
import { Spacing } from './Spacing.tsx';

/** The plan in a line, and folded under it all that can be said of it. */
export function PlanForm({ summary }: { summary: SeasonSummary }) {
  const { say, dayWithYear } = voice.value;
  const [isOpen, open] = useState(false);
  const { plan } = summary;
  // what was chosen for the reader is said as soon as one thing of it is changed
  const held = pinned(summary);
  const { name } = onion.value;
  const line = say('app.season.plan.is', {
    onion: name ?? say(`type.${plan.type}`),
    start: say(`start.${plan.start}`),
    date: dayWithYear(plan.startDay),
  });
  return (
    <>
      {planNotes(plan).map((note) => (
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
            <OnionFields held={held} along={held} />
            <BedField />
            <Spacing summary={summary} />
            <GrowingFields plan={plan} />
          </form>
        )}
      </details>
    </>
  );
}
