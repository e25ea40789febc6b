import { gardenRanges } from '@neckfall/engine';
import { MeasureField } from '../../../controls/MeasureField.tsx';
import { NumberField } from '../../../controls/NumberField.tsx';
import { units, voice } from '../../../state/settings.ts';
import type { AskedNumber, Draft } from './draft.ts';

const measures = {
  neckMm: 'mm',
  bulbMm: 'mm',
  wateredLitres: 'litres',
  fedG: 'g',
  weighedKg: 'kg',
} as const satisfies Partial<Record<AskedNumber, string>>;

type Props = {
  fields: readonly AskedNumber[];
  draft: Draft;
  onDraft: (changed: Partial<Draft>) => void;
};

/** Numbers of an entry, each in the reader's units; what is not known stays empty. */
export function NumberFields({ fields, draft, onDraft }: Props) {
  const { say } = voice.value;
  return (
    <>
      {fields.map((field) => {
        const own = draft.numbers[field] ?? null;
        const label = say(`app.seen.${field}.label`, { unit: units.value });
        const put = (value: number | null) => onDraft({ numbers: { ...draft.numbers, [field]: value } });
        const [min, max] = gardenRanges[field];
        if (field in measures) {
          const measure = measures[field as keyof typeof measures];
          return (
            <MeasureField
              key={field}
              label={label}
              hint=""
              measure={measure}
              value={own}
              range={[min, max]}
              onValue={put}
            />
          );
        }
        const isTenths = field === 'topsOverShare';
        return (
          <NumberField
            key={field}
            label={label}
            hint=""
            digits={isTenths || field === 'leavesGreen' ? 1 : 0}
            value={isTenths && own !== null ? own * 10 : own}
            min={min}
            max={isTenths ? 10 : max}
            onValue={(value) => put(isTenths && value !== null ? value / 10 : value)}
          />
        );
      })}
    </>
  );
}
