import { type Language, languageName, languages } from '@neckfall/words';
import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { canRemember } from '../device/remembered.ts';
import { allKept } from '../offline/updates.ts';
import { gardenHolder, gardenStanding } from '../state/garden.ts';
import { hrefTo, page } from '../state/route.ts';
import { choose, language, theme, units, voice } from '../state/settings.ts';

type Choice<Value extends string> = {
  name: 'units' | 'theme' | 'language';
  setting: Signal<Value>;
  values: readonly Value[];
  /** What each is called; its message unless given. */
  label?: (value: Value) => ComponentChildren;
};

/** The garden, units, look, and the way to what this is. */
export function Foot() {
  const { say } = voice.value;
  return (
    <footer class="foot">
      <GardenLink />
      <Choices name="language" setting={language} values={languages} label={ownName} />
      <Choices name="units" setting={units} values={['metric', 'us']} />
      <Choices name="theme" setting={theme} values={['system', 'light', 'dark']} />
      <AboutLink />
      <p role="status">{allKept.value && say('app.offline-ready')}</p>
      {!canRemember && <p>{say('app.cannot-keep')}</p>}
    </footer>
  );
}

/** The way to the garden that this browser holds, as soon as there is or was one. */
function GardenLink() {
  const { say } = voice.value;
  const standing = gardenStanding.value;
  if (!standing?.garden && !standing?.undo) return null;
  return (
    <p>
      <a href={hrefTo('kept')} aria-current={page.value === 'kept' ? 'page' : undefined}>
        {say('app.garden.link', {
          holder: gardenHolder.value,
          plans: standing.garden?.plantings.length ?? 0,
        })}
      </a>
    </p>
  );
}

function AboutLink() {
  return (
    <p>
      <a href={hrefTo('about')} aria-current={page.value === 'about' ? 'page' : undefined}>
        {voice.value.say('app.about.link')}
      </a>
    </p>
  );
}

/** Each language in itself, for those who read no other. */
function ownName(value: Language) {
  return <span lang={value}>{languageName(value)}</span>;
}

function Choices<Value extends string>({ name, setting, values, label }: Choice<Value>) {
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
          {label ? label(value) : say(`app.${name}.${value}` as 'app.units.us')}
        </label>
      ))}
    </fieldset>
  );
}
