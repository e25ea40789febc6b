import { gardenRanges, type PlanForm, planDefaults, planFields } from '@neckfall/engine';
import { go } from '../state/route.ts';
import { units, voice } from '../state/settings.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { MeasureField } from './MeasureField.tsx';

/** Size and storing of sets. What is usual stays out of the address, and no change is a step in the history. */
export function SetFields({ setSizeMm, setStore }: Pick<PlanForm, 'setSizeMm' | 'setStore'>) {
  const { say } = voice.value;
  return (
    <>
      <MeasureField
        label={say('app.season.set-size', { unit: units.value === 'us' ? 'inch' : 'mm' })}
        hint={say('app.season.set-size.hint')}
        measure="mm"
        value={setSizeMm}
        range={gardenRanges.setSizeMm}
        onValue={(size) => go({ setSize: size === planDefaults.setSizeMm ? null : size }, { replace: true })}
      />
      <ChoiceField
        label={say('app.season.set-store')}
        value={setStore}
        options={planFields.setStore.words.map((value) => ({
          value,
          label: say(`app.season.set-store.${value}`),
        }))}
        onValue={(store) => go({ setStore: store === 'warm' ? store : null }, { replace: true })}
      />
    </>
  );
}
