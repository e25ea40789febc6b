import { gardenRanges, type Plan, planFields } from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import { asked, go } from '../state/route.ts';
import { units, voice } from '../state/settings.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { MeasureField } from './MeasureField.tsx';
import { NumberField } from './NumberField.tsx';
import { SetFields } from './SetFields.tsx';

/** How it is grown: sets, nursery, cover, water. What is usual stays out of the address. */
export function GrowingFields({ plan }: { plan: Plan }) {
  const { say } = voice.value;
  return (
    <>
      {plan.start === 'sets' && <SetFields setSizeMm={plan.setSizeMm} setStore={plan.setStore} />}
      {plan.start === 'raised-seedlings' && <NurseryFields plan={plan} />}
      <ChoiceField
        label={say('app.ground.cover')}
        value={plan.cover}
        options={planFields.cover.words.map((value) => ({ value, label: say(`cover.${value}`) }))}
        onValue={(cover) => change({ cover: cover === 'none' ? null : cover })}
      />
      <ChoiceField
        label={say('app.ground.water')}
        value={plan.water}
        options={planFields.water.words.map((value) => ({ value, label: say(`water.${value}`) }))}
        onValue={(water) => change({ water: water === 'rain' ? water : null })}
      />
    </>
  );
}

function NurseryFields({ plan }: { plan: Plan<'raised-seedlings'> }) {
  const { say, quantity } = voice.value;
  const { nurseryTemp, lampHours } = asked.value;
  const [fewest, most] = gardenRanges.lampHours;
  return (
    <>
      <MeasureField
        label={say('app.season.nursery', { unit: units.value === 'us' ? 'inch' : 'cm' })}
        hint={
          nurseryTemp === null
            ? say('app.season.nursery.hint', {
                temperature:
                  plan.nurseryTempC === null ? 'outdoors' : quantity('temperature', plan.nurseryTempC),
              })
            : ''
        }
        measure="celsius"
        value={nurseryTemp}
        range={gardenRanges.nurseryTempC}
        onValue={(value) => change({ nurseryTemp: value })}
      />
      <NumberField
        label={say('app.season.lamps')}
        hint={say('app.season.lamps.hint')}
        value={lampHours}
        min={fewest}
        max={most}
        digits={1}
        onValue={(value) => change({ lampHours: value })}
      />
    </>
  );
}

/** Each change is no step of its own in the history. */
function change(changes: Partial<Asked>): void {
  go(changes, { replace: true });
}
