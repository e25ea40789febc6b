import {
  densityOf,
  gardenRanges,
  type SeasonSummary,
  seedAges,
  spacingOf,
  startWays,
  usualSpacing,
} from '@neckfall/engine';
import { useState } from 'preact/hooks';
import type { Asked } from '../../address/address-form.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { MeasureField } from '../../controls/MeasureField.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { usualPlants } from '../../state/plan-asked.ts';
import { asked, go } from '../../state/route.ts';
import { units, voice } from '../../state/settings.ts';
import { pinned } from './pinned.ts';
import { SpacingTold } from './SpacingTold.tsx';

/** What is being typed, before the address has it. */
type Typed = Partial<Pick<Asked, 'rowDistance' | 'plantDistance' | 'perStation' | 'plants'>>;

const [fewest, most] = gardenRanges.plants;

/** How far apart, how many together and how many in all: what that takes and gives is told while it is typed. */
export function Spacing({ summary }: { summary: SeasonSummary }) {
  const { say, quantity } = voice.value;
  const [typed, type] = useState<Typed>({});
  const wanted = { ...asked.value, ...typed };
  const spacing = spacingOf({
    rowDistanceCm: wanted.rowDistance,
    plantDistanceCm: wanted.plantDistance,
    plantsPerStation: wanted.perStation,
  });
  const unit = units.value === 'us' ? 'inch' : 'cm';
  const shown = asked.value;

  function take(changes: Partial<Asked>): void {
    type({});
    // the kind that was chosen for the reader stays: another spacing is no other onion
    go({ ...pinned(summary), ...changes }, { replace: true });
  }
  const unlessUsual = (value: number | null, usual: number) => (value === usual ? null : value);

  return (
    <>
      <MeasureField
        label={say('app.season.rows', { unit })}
        hint={say('app.season.rows.hint', { density: quantity('density', densityOf(spacing)) })}
        measure="cm"
        value={shown.rowDistance ?? usualSpacing.rowCm}
        range={gardenRanges.rowDistanceCm}
        onTyped={(value) => type({ ...typed, rowDistance: value })}
        onValue={(value) => take({ rowDistance: unlessUsual(value, usualSpacing.rowCm) })}
      />
      <MeasureField
        label={say('app.season.apart', { unit })}
        hint={say('app.season.apart.hint')}
        measure="cm"
        value={shown.plantDistance ?? usualSpacing.plantCm}
        range={gardenRanges.plantDistanceCm}
        onTyped={(value) => type({ ...typed, plantDistance: value })}
        onValue={(value) => take({ plantDistance: unlessUsual(value, usualSpacing.plantCm) })}
      />
      <NumberField
        label={say('app.spacing.together')}
        hint={say('app.spacing.together.hint')}
        value={shown.perStation ?? usualSpacing.perStation}
        min={gardenRanges.plantsPerStation[0]}
        max={gardenRanges.plantsPerStation[1]}
        digits={1}
        onTyped={(value) => type({ ...typed, perStation: value })}
        onValue={(value) => take({ perStation: unlessUsual(value, usualSpacing.perStation) })}
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
