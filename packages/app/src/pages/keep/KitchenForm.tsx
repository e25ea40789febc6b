import { storeName, useSource } from '@neckfall/answers';
import { gardenRanges, type Like, likes, seedAges } from '@neckfall/engine';
import { shown } from '@neckfall/words';
import { useState } from 'preact/hooks';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { GardenSteps } from '../../controls/GardenSteps.tsx';
import { MeasureField } from '../../controls/MeasureField.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { placeOfStore, StoreFields } from '../../controls/StoreFields.tsx';
import { gardenHolder, gardenStanding } from '../../state/garden.ts';
import { household, keepKitchen, kitchenSaid, sayKitchen, usualUse } from '../../state/kitchen.ts';
import { asked, go } from '../../state/route.ts';
import { units, voice } from '../../state/settings.ts';
import { StoreReadings } from './StoreReadings.tsx';

/** The kitchen in a line, and folded under it all that can be said of it. */
export function KitchenForm() {
  const speaker = voice.value;
  const { say, quantity } = speaker;
  const [isOpen, open] = useState(false);
  const { people, gramsPerWeek, store } = household.value;
  return (
    <details class="plan" onToggle={(event) => open(event.currentTarget.open)}>
      <summary>
        {say('app.keep.kitchen', {
          people,
          week: quantity('crop', gramsPerWeek / 1000),
          store: storeName(store, speaker),
        })}{' '}
        {say('app.keep.change')}
      </summary>
      {isOpen && <Fields />}
    </details>
  );
}

function Fields() {
  const speaker = voice.value;
  const { say, quantity } = speaker;
  const said = kitchenSaid.value;
  const { people, store } = household.value;
  const place = placeOfStore(store);
  const { gramsPerPerson, source } = usualUse.value;
  return (
    <>
      <form class="form" onSubmit={(event) => event.preventDefault()}>
        <NumberField
          label={say('app.keep.people')}
          hint=""
          value={people}
          min={gardenRanges.people[0]}
          max={gardenRanges.people[1]}
          onValue={(value) => void sayKitchen({ people: value === null ? null : Math.round(value) })}
        />
        <MeasureField
          label={say('app.keep.grams', { unit: units.value })}
          hint={say('app.keep.grams.hint', {
            each: quantity('bulbMass', gramsPerPerson),
            source: say(source.from === 'memory' ? 'app.keep.grams.memory' : 'app.keep.grams.seen', {
              source: useSource(source, speaker),
            }),
          })}
          measure="g"
          value={said.gramsPerWeek}
          range={gardenRanges.gramsPerWeek}
          onValue={(grams) => void sayKitchen({ gramsPerWeek: grams === null ? null : Math.round(grams) })}
        />
        <StoreFields />
        <SeedField />
        <LikeFields liked={said.likes ?? []} />
      </form>
      {place && <StoreReadings place={place} />}
      <KeepIt />
      <GardenSteps />
    </>
  );
}

/** It says how much to sow, and nothing of the bed. */
function SeedField() {
  const { say } = voice.value;
  return (
    <ChoiceField
      label={say('app.spacing.seed-age')}
      value={asked.value.seedAge ?? 'unsaid'}
      options={(['unsaid', ...seedAges] as const).map((value) => ({
        value,
        label: say(`app.spacing.seed-age.${value}`),
      }))}
      onValue={(age) => go({ seedAge: age === 'unsaid' ? null : age }, { replace: true })}
    />
  );
}

function LikeFields({ liked }: { liked: readonly Like[] }) {
  const { say } = voice.value;
  const change = (like: Like, isWanted: boolean) => {
    const wanted = likes.filter((one) => (one === like ? isWanted : liked.includes(one)));
    void sayKitchen({ likes: wanted.length > 0 ? wanted : null });
  };
  return (
    <fieldset class="wide">
      <legend>{say('app.keep.likes')}</legend>
      {likes.map((like) => (
        <label key={like}>
          <input
            type="checkbox"
            checked={liked.includes(like)}
            onChange={(event) => change(like, event.currentTarget.checked)}
          />
          {say(`app.keep.like.${like}`)}
        </label>
      ))}
    </fieldset>
  );
}

/** Keeps the kitchen where no garden holds it yet; where one does, each change is kept. */
function KeepIt() {
  const { say } = voice.value;
  const garden = gardenStanding.value?.garden ?? null;
  if (garden?.kitchen) return <p role="status">{shown(say('app.keep.kept'))}</p>;
  const { people, gramsPerWeek, store } = household.value;
  const said = kitchenSaid.value;
  const kept = typeof store === 'object' && 'place' in store ? store.place : store;
  return (
    <button
      type="button"
      onClick={() =>
        void keepKitchen({ ...said, people, store: kept, gramsPerWeek: said.gramsPerWeek && gramsPerWeek })
      }
    >
      {say('app.keep.keep', { holder: gardenHolder.value })}
    </button>
  );
}
