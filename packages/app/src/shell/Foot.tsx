import type { Signal } from '@preact/signals';
import { ShareLink } from '../controls/ShareLink.tsx';
import { allKept } from '../offline/updates.ts';
import { canKeep } from '../state/keep.ts';
import { choose, theme, units, voice } from '../state/settings.ts';

type Choice<Value extends string> = {
  name: 'units' | 'theme';
  setting: Signal<Value>;
  values: readonly Value[];
};

/** Units, look, and the link to share. */
export function Foot() {
  const { say } = voice.value;
  return (
    <footer class="foot">
      <ShareLink />
      <Choices name="units" setting={units} values={['metric', 'us']} />
      <Choices name="theme" setting={theme} values={['system', 'light', 'dark']} />
      <p role="status">{allKept.value && say('app.offline-ready')}</p>
      {!canKeep && <p>{say('app.cannot-keep')}</p>}
    </footer>
  );
}

function Choices<Value extends string>({ name, setting, values }: Choice<Value>) {
  const { say } = voice.value;
  return (
    <fieldset>
      <legend>{say(`app.${name}`)}</legend>
      {values.map((value) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            value={value}
            checked={setting.value === value}
            onChange={() => choose(name, setting, value)}
          />
          {say(`app.${name}.${value}` as 'app.units.us')}
        </label>
      ))}
    </fieldset>
  );
}
