import { feetToMetres, metresToFeet, planDefaults, planFields, soilTextures } from '@neckfall/engine';
import type { Asked } from '../../address/address-form.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { place } from '../../state/place.ts';
import { asked, go } from '../../state/route.ts';
import { units, voice } from '../../state/settings.ts';

const lowestM = -430;
const highestM = 6000;

/** What the grower knows better than the climate records: sun, height, cold air, cover, water, soil. */
export function Ground() {
  const { say, all } = voice.value;
  return (
    <details class="ground">
      <summary>
        {say('app.ground.is', { list: all(asIs()) })} {say('app.ground.change')}
      </summary>
      <form class="form" onSubmit={(event) => event.preventDefault()}>
        <NumberField
          label={say('app.ground.sun')}
          hint={say('app.ground.sun.hint')}
          value={asked.value.sun}
          min={0}
          max={24}
          digits={1}
          onValue={(sun) => change({ sun })}
        />
        <Height />
        <ChoiceField
          label={say('app.ground.cover')}
          value={asked.value.cover ?? planDefaults.cover}
          options={planFields.cover.words.map((value) => ({ value, label: say(`cover.${value}`) }))}
          onValue={(cover) => change({ cover: cover === 'none' ? null : cover })}
        />
        <ChoiceField
          label={say('app.ground.water')}
          value={asked.value.water ?? planDefaults.water}
          options={planFields.water.words.map((value) => ({ value, label: say(`water.${value}`) }))}
          onValue={(water) => change({ water: water === 'rain' ? water : null })}
        />
        <ChoiceField
          label={say('app.ground.soil')}
          value={asked.value.soil ?? planDefaults.soil}
          options={soilTextures.map((value) => ({ value, label: say(`soil.${value}`) }))}
          onValue={(soil) => change({ soil: soil === planDefaults.soil ? null : soil })}
        />
        <label>
          <input
            type="checkbox"
            checked={asked.value.hollow === true}
            onChange={(event) => change({ hollow: event.currentTarget.checked || null })}
          />
          {say('app.ground.hollow')}
        </label>
      </form>
    </details>
  );
}

function Height() {
  const { say, quantity } = voice.value;
  const inFeet = units.value === 'us';
  const shown = (metres: number) => (inFeet ? Math.round(metresToFeet(metres)) : metres);
  const { elevation } = asked.value;
  return (
    <NumberField
      label={say('app.ground.elevation', { unit: inFeet ? 'feet' : 'metres' })}
      hint={say('app.ground.elevation.hint', {
        elevation: quantity('elevation', place.value?.elevationM ?? 0),
      })}
      value={elevation === null ? null : shown(elevation)}
      min={shown(lowestM)}
      max={shown(highestM)}
      onValue={(height) =>
        change({ elevation: height === null ? null : Math.round(inFeet ? feetToMetres(height) : height) })
      }
    />
  );
}

/** The address tells the ground, so that a link gives the same answer; each change is no step of its own. */
function change(changes: Partial<Asked>): void {
  go(changes, { replace: true });
}

function asIs(): string[] {
  const { say, number } = voice.value;
  const { sun, cover, water, soil, hollow } = asked.value;
  return [
    sun === null ? say('app.ground.open') : say('app.ground.hours', { hours: number(sun, 1) }),
    ...(hollow ? [say('app.ground.in-hollow')] : []),
    ...(soil === null ? [] : [say(`soil.${soil}`)]),
    say(`water.${water ?? planDefaults.water}`),
    say(`cover.${cover ?? planDefaults.cover}`),
  ];
}
