import { formatDay, gardenRanges, parseDay, type StorePlace, type StoreReading } from '@neckfall/engine';
import { useRef, useState } from 'preact/hooks';
import { DayField } from '../../controls/DayField.tsx';
import { inUnits, MeasureField } from '../../controls/MeasureField.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { keepReadings, storeReadings } from '../../state/kitchen.ts';
import { units, voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';

/** Readings so old tell of a store as well as new ones, days. */
const oldest = 3_653;

/** What was read of the air in a usual store, and a place to note more. */
export function StoreReadings({ place }: { place: StorePlace }) {
  const { say } = voice.value;
  const heading = useRef<HTMLLegendElement>(null);
  const all = storeReadings.value;
  const here = all.filter(({ store }) => store === place).sort((a, b) => b.date.localeCompare(a.date));

  async function remove(reading: StoreReading): Promise<void> {
    if (await keepReadings(all.filter((one) => one !== reading))) heading.current?.focus();
  }

  return (
    <fieldset>
      <legend ref={heading} tabIndex={-1}>
        {say('app.keep.readings')}
      </legend>
      <p>{say('app.keep.readings.why')}</p>
      {here.length > 0 && (
        <ul>
          {here.map((reading, at) => (
            <li key={`${reading.date} ${at}`}>
              {readingWords(reading)}{' '}
              <button
                type="button"
                aria-label={say('app.seen.remove-of', { entry: readingWords(reading) })}
                onClick={() => void remove(reading)}
              >
                {say('app.seen.remove')}
              </button>
            </li>
          ))}
        </ul>
      )}
      <NewReading onNote={(read) => keepReadings([...all, { store: place, ...read }])} />
    </fieldset>
  );
}

type NewProps = { onNote: (read: Read) => Promise<boolean> };
type Read = Pick<StoreReading, 'date' | 'tempC' | 'humidityPct'>;

function NewReading({ onNote }: NewProps) {
  const { say } = voice.value;
  const [day, setDay] = useState(today.value);
  const [tempC, setTemp] = useState<number | null>(null);
  const [humidityPct, setHumidity] = useState<number | null>(null);
  const [told, tell] = useState<'nothing' | 'noted' | null>(null);
  // fields are emptied once their numbers are noted
  const [noted, count] = useState(0);

  async function note(): Promise<void> {
    if (tempC === null) {
      tell('nothing');
      return;
    }
    if (!(await onNote({ date: formatDay(day), tempC, humidityPct }))) return;
    setTemp(null);
    setHumidity(null);
    count(noted + 1);
    tell('noted');
  }

  return (
    <form
      class="form"
      aria-label={say('app.keep.readings')}
      onSubmit={(event) => {
        event.preventDefault();
        void note();
      }}
    >
      <DayField
        label={say('app.seen.date')}
        value={day}
        min={today.value - oldest}
        max={today.value}
        onValue={(given) => given !== null && setDay(given)}
      />
      <MeasureField
        key={`t${noted}`}
        label={say('app.keep.store.temp', { unit: units.value })}
        hint=""
        measure="celsius"
        value={tempC}
        range={gardenRanges.storeTempC}
        onValue={setTemp}
      />
      <NumberField
        key={`h${noted}`}
        label={say('app.keep.store.humidity')}
        hint={say('app.keep.reading.humidity.hint')}
        value={humidityPct}
        min={gardenRanges.humidityPct[0]}
        max={gardenRanges.humidityPct[1]}
        onValue={setHumidity}
      />
      <button type="submit">{say('app.keep.check.note')}</button>
      <p role="status" class="wide">
        {told === 'nothing' && say('app.keep.reading.nothing')}
        {told === 'noted' && say('app.keep.reading.noted')}
      </p>
    </form>
  );
}

function readingWords({ date, tempC, humidityPct }: StoreReading): string {
  const { say, number, dayWithYear } = voice.value;
  const { shown } = inUnits('celsius', gardenRanges.storeTempC);
  return say('app.keep.reading.is', {
    date: dayWithYear(parseDay(date) ?? 0),
    temp: number(shown(tempC) ?? 0, 1),
    unit: units.value,
    humidity: humidityPct === null ? 'none' : number(humidityPct),
  });
}
