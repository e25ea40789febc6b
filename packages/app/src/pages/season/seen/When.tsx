import { gardenRanges } from '@neckfall/engine';
import { DayField } from '../../../controls/DayField.tsx';
import { NumberField } from '../../../controls/NumberField.tsx';
import { voice } from '../../../state/settings.ts';
import { today } from '../../../state/today.ts';
import type { Draft } from './draft.ts';

type Props = {
  draft: Pick<Draft, 'day' | 'lookedAt'>;
  days: { min: number; max: number };
  /** Whether a number of plants belongs to it. */
  isOverPlants: boolean;
  onDraft: (changed: Partial<Draft>) => void;
};

/** Today, on as many plants as last time: in a line, and opened where it was otherwise. */
export function When({ draft, days, isOverPlants, onDraft }: Props) {
  const { say, dayWithYear } = voice.value;
  const words = draft.day === today.value ? say('app.seen.when.today') : dayWithYear(draft.day);
  return (
    <details class="noted-when">
      <summary>
        {isOverPlants
          ? say('app.seen.when', { day: words, plants: draft.lookedAt })
          : say('app.seen.when.day', { day: words })}
      </summary>
      <div class="form">
        <WhenFields draft={draft} days={days} isOverPlants={isOverPlants} onDraft={onDraft} />
      </div>
    </details>
  );
}

export function WhenFields({ draft, days, isOverPlants, onDraft }: Props) {
  const { say } = voice.value;
  const [fewest, most] = gardenRanges.lookedAt;
  return (
    <>
      <DayField
        label={say('app.seen.date')}
        value={draft.day}
        min={days.min}
        max={days.max}
        onValue={(day) => day !== null && onDraft({ day })}
      />
      {isOverPlants && (
        <NumberField
          label={say('app.seen.lookedAt')}
          hint={say('app.seen.lookedAt.hint')}
          value={draft.lookedAt}
          min={fewest}
          max={most}
          onValue={(plants) => plants !== null && onDraft({ lookedAt: Math.round(plants) })}
        />
      )}
    </>
  );
}
