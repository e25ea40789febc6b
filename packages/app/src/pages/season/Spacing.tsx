import { gardenRanges, type SeasonSummary, seedAges, spacingOf, startWays } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import type { Asked } from '../../address/address-form.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { DistanceFields, unlessUsual } from '../../controls/DistanceFields.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { usualPlants } from '../../state/plan-asked.ts';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { pinned } from './pinned.ts';
import { SpacingTold } from './SpacingTold.tsx';

/** What is being typed, before the address has it. */
type Typed = Partial<Pick<Asked, 'rowDistance' | 'plantDistance' | 'perStation' | 'plants'>>;

const [fewest, most] = gardenRanges.plants;

/** How far apart, how many together and how many in all: what that takes and gives is told while it is typed. */
export function Spacing({ summary }: { summary: SeasonSummary }) {
  const { say } = voice.value;
  const [typed, type] = useState<Typed>({});
  const wanted = { ...asked.value, ...typed };
  const spacing = spacingOf({
    rowDistanceCm: wanted.rowDistance,
    plantDistanceCm: wanted.plantDistance,
    plantsPerStation: wanted.perStation,
  });
  const shown = asked.value;

  function take(changes: Partial<Asked>): void {
    type({});
    // the kind that was chosen for the reader stays: another spacing is no other onion
    go({ ...pinned(summary), ...changes }, { replace: true });
  }

  return (
    <>
      <DistanceFields
        spacing={spacing}
        onTyped={(changes) => type({ ...typed, ...changes })}
        onValue={take}
      />
      <NumberField
        label={say('app.spacing.wanted')}
        hint={say('app.season.yield.plants.hint')}
        value={shown.plants ?? usualPlants}
        min={fewest}
        max={most}
        onTyped={(value) => type({ ...typed, plants: value === null ? null : Math.round(value) })}
        onValue={(value) =>
          take({ plants: value === null ? null : unlessUsual(Math.round(value), usualPlants) })
        }
      />
      {startWays[summary.plan.start].from === 'seed' && (
        <ChoiceField
          label={say('app.spacing.seed-age')}
          value={shown.seedAge ?? 'unsaid'}
          options={(['unsaid', ...seedAges] as const).map((value) => ({
            value,
            label: say(`app.spacing.seed-age.${value}`),
          }))}
          onValue={(age) => take({ seedAge: age === 'unsaid' ? null : age })}
        />
      )}
      <SpacingTold
        summary={summary}
        spacing={spacing}
        plants={wanted.plants ?? usualPlants}
        onFill={(plants) => take({ plants: unlessUsual(plants, usualPlants) })}
      />
    </>
  );
}
