import { units } from '../state/settings.ts';
import { NumberField } from './NumberField.tsx';

type Measure = 'cm' | 'mm' | 'celsius';

/** American units by what is measured: times the first, plus the second. */
const american: Readonly<Record<Measure, readonly [factor: number, offset: number]>> = {
  cm: [1 / 2.54, 0],
  mm: [1 / 25.4, 0],
  celsius: [1.8, 32],
};

type Props = {
  label: string;
  hint: string;
  measure: Measure;
  /** In the unit of the measure, whatever the reader sees. */
  value: number | null;
  range: readonly [number, number];
  onValue: (value: number | null) => void;
};

/** A number in the reader's units. */
export function MeasureField({ label, hint, measure, value, range: [min, max], onValue }: Props) {
  const [factor, offset] = units.value === 'us' ? american[measure] : [1, 0];
  const digits = units.value === 'us' && measure === 'mm' ? 2 : 1;
  const shown = (own: number) => Number((own * factor + offset).toFixed(digits));
  return (
    <NumberField
      label={label}
      hint={hint}
      value={value === null ? null : shown(value)}
      min={shown(min)}
      max={shown(max)}
      digits={digits}
      onValue={(given) =>
        onValue(
          given === null
            ? null
            : // a rounded end may lie a hair outside
              Math.min(max, Math.max(min, Number(((given - offset) / factor).toFixed(1)))),
        )
      }
    />
  );
}
