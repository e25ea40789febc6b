import { densityOf, gardenRanges, type Spacing, usualSpacing } from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import { asked } from '../state/route.ts';
import { units, voice } from '../state/settings.ts';
import { MeasureField } from './MeasureField.tsx';
import { NumberField } from './NumberField.tsx';

type Distances = Partial<Pick<Asked, 'rowDistance' | 'plantDistance' | 'perStation'>>;

type Props = {
  /** What is said of the fields, as typed so far. */
  spacing: Spacing;
  onTyped?: (changes: Distances) => void;
  /** Without what is usual. */
  onValue: (changes: Distances) => void;
};

/** How far apart, and how many together. */
export function DistanceFields({ spacing, onTyped, onValue }: Props) {
  const { say, quantity } = voice.value;
  const unit = units.value === 'us' ? 'inch' : 'cm';
  const shown = asked.value;
  return (
    <>
      <MeasureField
        label={say('app.season.rows', { unit })}
        hint={say('app.season.rows.hint', { density: quantity('density', densityOf(spacing)) })}
        measure="cm"
        value={shown.rowDistance ?? usualSpacing.rowCm}
        range={gardenRanges.rowDistanceCm}
        onTyped={(value) => onTyped?.({ rowDistance: value })}
        onValue={(value) => onValue({ rowDistance: unlessUsual(value, usualSpacing.rowCm) })}
      />
      <MeasureField
        label={say('app.season.apart', { unit })}
        hint={say('app.season.apart.hint')}
        measure="cm"
        value={shown.plantDistance ?? usualSpacing.plantCm}
        range={gardenRanges.plantDistanceCm}
        onTyped={(value) => onTyped?.({ plantDistance: value })}
        onValue={(value) => onValue({ plantDistance: unlessUsual(value, usualSpacing.plantCm) })}
      />
      <NumberField
        label={say('app.spacing.together')}
        hint={say('app.spacing.together.hint')}
        value={shown.perStation ?? usualSpacing.perStation}
        min={gardenRanges.plantsPerStation[0]}
        max={gardenRanges.plantsPerStation[1]}
        digits={1}
        onTyped={(value) => onTyped?.({ perStation: value })}
        onValue={(value) => onValue({ perStation: unlessUsual(value, usualSpacing.perStation) })}
      />
    </>
  );
}

/** What is usual stays out of the address. */
export function unlessUsual(value: number | null, usual: number): number | null {
  return value === usual ? null : value;
}
