import { storeName } from '@neckfall/answers';
import { gardenRanges, type StorePlace, type StoreSaid, storePlaces } from '@neckfall/engine';
import { household, sayKitchen } from '../state/kitchen.ts';
import { units, voice } from '../state/settings.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { MeasureField } from './MeasureField.tsx';
import { NumberField } from './NumberField.tsx';

/** Taken for a store of the reader's own until its air is said: cool and dry. */
const ownAir = { tempC: 5, humidityPct: 65 };

/** The usual store that it is; null for air the year round. */
export function placeOfStore(store: StoreSaid): StorePlace | null {
  if (typeof store === 'string') return store;
  return 'place' in store ? store.place : null;
}

/** Where onions are kept, or the air of a store of one's own. */
export function StoreFields() {
  const speaker = voice.value;
  const { say } = speaker;
  const { store } = household.value;
  const air = typeof store === 'object' && 'tempC' in store ? store : null;
  const options: { value: StorePlace | 'own'; label: string }[] = [
    ...storePlaces.map((value) => ({ value, label: storeName(value, speaker) })),
    { value: 'own', label: say('app.keep.store.own') },
  ];
  return (
    <>
      <ChoiceField
        label={say('app.keep.store')}
        value={placeOfStore(store) ?? 'own'}
        options={options}
        onValue={(value) => void sayKitchen({ store: value === 'own' ? ownAir : value })}
      />
      {air && (
        <>
          <MeasureField
            label={say('app.keep.store.temp', { unit: units.value })}
            hint=""
            measure="celsius"
            value={air.tempC}
            range={gardenRanges.storeTempC}
            onValue={(tempC) => tempC !== null && void sayKitchen({ store: { ...air, tempC } })}
          />
          <NumberField
            label={say('app.keep.store.humidity')}
            hint={say('app.keep.store.humidity.hint')}
            value={air.humidityPct}
            min={gardenRanges.storeHumidityPct[0]}
            max={gardenRanges.storeHumidityPct[1]}
            onValue={(humidityPct) =>
              humidityPct !== null && void sayKitchen({ store: { ...air, humidityPct } })
            }
          />
        </>
      )}
    </>
  );
}
