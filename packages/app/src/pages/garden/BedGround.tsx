import { fertilities, gardenRanges, planFields, soilTextures, wateringWays } from '@neckfall/engine';
import type { MessageKey } from '@neckfall/words';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { MeasureField } from '../../controls/MeasureField.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { type BedSaid, readYears } from '../../garden/beds.ts';
import { units, voice } from '../../state/settings.ts';
import { TextField } from './TextField.tsx';

type Props = { said: BedSaid; put: (changed: Partial<BedSaid>) => void };

/** What all that lies in a bed shares: its ground, its sun, its water, and what it carried. */
export function BedGround(bed: Props) {
  const { said, put } = bed;
  const { say } = voice.value;
  const inUs = units.value === 'us';
  const number = (field: 'sunHours' | 'waterSaltDsPerM' | 'soilPh', digits: number) => (
    <NumberField
      label={say(`app.bed.${field}`)}
      hint={say(`app.bed.${field}.hint`)}
      value={said[field]}
      min={gardenRanges[field][0]}
      max={gardenRanges[field][1]}
      digits={digits}
      onValue={(value) => put({ [field]: value })}
    />
  );
  return (
    <>
      <WordField label={say('app.ground.soil')} name="soil" words={soilTextures} of="soil" {...bed} />
      {number('sunHours', 1)}
      <WordField
        label={say('app.ground.cover')}
        name="cover"
        words={planFields.cover.words}
        of="cover"
        {...bed}
      />
      <WordField
        label={say('app.ground.water')}
        name="water"
        words={planFields.water.words}
        of="water"
        {...bed}
      />
      <WordField
        label={say('app.bed.watering')}
        name="watering"
        words={wateringWays}
        of="app.bed.watering"
        {...bed}
      />
      {(said.watering === 'hose' || said.watering === 'drip') && (
        <MeasureField
          label={say('app.bed.flow', { unit: inUs ? 'gallons' : 'litres' })}
          hint={say('app.bed.flow.hint')}
          measure="litres"
          value={said.flowLPerH}
          range={gardenRanges.flowLPerH}
          onValue={(flowLPerH) => put({ flowLPerH })}
        />
      )}
      {number('waterSaltDsPerM', 2)}
      <WordField
        label={say('app.bed.fertility')}
        name="fertility"
        words={fertilities}
        of="app.bed.fertility"
        {...bed}
      />
      <MeasureField
        label={say('app.bed.compost', { unit: inUs ? 'pounds' : 'kilograms' })}
        hint={say('app.bed.compost.hint')}
        measure="kgPerM2"
        value={said.compostKgPerM2}
        range={gardenRanges.compostKgPerM2}
        onValue={(compostKgPerM2) => put({ compostKgPerM2 })}
      />
      {number('soilPh', 1)}
      <TextField
        label={say('app.bed.feed')}
        hint={say('app.bed.feed.hint')}
        value={said.feedProduct ?? ''}
        onValue={(text) => put({ feedProduct: text === '' ? null : text })}
      />
      <TextField
        label={say('app.bed.alliums')}
        hint={say('app.bed.alliums.hint')}
        value={said.alliumYears.join(', ')}
        bad={(text) =>
          readYears(text, gardenRanges.allium) === null ? say('app.bed.alliums.bad', { value: text }) : null
        }
        onValue={(text) => put({ alliumYears: readYears(text, gardenRanges.allium) ?? [] })}
      />
      <YesField label={say('app.bed.legume')} name="afterLegume" {...bed} />
      <YesField label={say('app.bed.white-rot')} name="whiteRot" {...bed} />
    </>
  );
}

type WordName = 'soil' | 'cover' | 'water' | 'watering' | 'fertility';
type WordProps<Word extends string> = Props & {
  label: string;
  name: WordName;
  words: readonly Word[];
  /** Messages of the words begin with it. */
  of: string;
};

/** One of a few words, or nothing said. */
function WordField<Word extends string>({ label, name, words, of, said, put }: WordProps<Word>) {
  const { say } = voice.value;
  return (
    <ChoiceField
      label={label}
      value={said[name] ?? ''}
      options={[
        { value: '', label: say('app.bed.unsaid') },
        ...words.map((value) => ({ value: value as string, label: say(`${of}.${value}` as MessageKey) })),
      ]}
      onValue={(value) => put({ [name]: value === '' ? null : value })}
    />
  );
}

function YesField({ label, name, said, put }: Props & { label: string; name: 'afterLegume' | 'whiteRot' }) {
  return (
    <label>
      <input
        type="checkbox"
        checked={said[name] === true}
        onChange={(event) => put({ [name]: event.currentTarget.checked || null })}
      />
      {label}
    </label>
  );
}
