import { units } from '../state/settings.ts';
import { NumberField } from './NumberField.tsx';

export type Measure = 'm' | 'cm' | 'mm' | 'm2' | 'celsius' | 'litres' | 'g' | 'kg' | 'kgPerM2';

type Unit = { factor: number; offset: number; digits: number };

/**
 * American units by what is measured: times the factor, plus the offset, to so many digits. Exact by definition: foot
 * 0.3048 m, inch 2.54 cm, US gallon 3.785411784 l, ounce 28.349523125 g, pound 0.45359237 kg.
 */
const american: Readonly<Record<Measure, Unit>> = {
  m: { factor: 1 / 0.3048, offset: 0, digits: 1 },
  cm: { factor: 1 / 2.54, offset: 0, digits: 1 },
  mm: { factor: 1 / 25.4, offset: 0, digits: 2 },
  m2: { factor: 1 / 0.3048 ** 2, offset: 0, digits: 1 },
  celsius: { factor: 1.8, offset: 32, digits: 1 },
  litres: { factor: 1 / 3.785411784, offset: 0, digits: 1 },
  g: { factor: 1 / 28.349523125, offset: 0, digits: 1 },
  kg: { factor: 1 / 0.45359237, offset: 0, digits: 2 },
  kgPerM2: { factor: 0.3048 ** 2 / 0.45359237, offset: 0, digits: 2 },
};

/** Digits kept and shown of our own units. */
const ownDigits: Readonly<Record<Measure, number>> = {
  m: 2,
  cm: 1,
  mm: 1,
  m2: 2,
  celsius: 1,
  litres: 1,
  g: 1,
  kg: 3,
  kgPerM2: 2,
};

/** A measure in the reader's units, and back within its range. */
export function inUnits(measure: Measure, [min, max]: readonly [min: number, max: number]) {
  const own = { factor: 1, offset: 0, digits: ownDigits[measure] };
  const { factor, offset, digits } = units.value === 'us' ? american[measure] : own;
  const shown = (value: number) => Number((value * factor + offset).toFixed(digits));
  return {
    digits,
    min: shown(min),
    max: shown(max),
    shown: (value: number | null) => (value === null ? null : shown(value)),
    // a rounded end may lie a hair outside
    own: (given: number | null) =>
      given === null
        ? null
        : Math.min(max, Math.max(min, Number(((given - offset) / factor).toFixed(ownDigits[measure])))),
  };
}

type Props = {
  label: string;
  hint: string;
  measure: Measure;
  /** In the unit of the measure, whatever the reader sees. */
  value: number | null;
  range: readonly [number, number];
  onValue: (value: number | null) => void;
  onTyped?: (value: number | null) => void;
};

/** A number in the reader's units. */
export function MeasureField({ label, hint, measure, value, range, onValue, onTyped }: Props) {
  const { shown, own, ...scale } = inUnits(measure, range);
  return (
    <NumberField
      label={label}
      hint={hint}
      {...scale}
      value={shown(value)}
      onValue={(given) => onValue(own(given))}
      onTyped={(given) => onTyped?.(own(given))}
    />
  );
}
