import type { FoundFile, WeatherCorrections, WeatherQuantity } from '@neckfall/engine';
import { weatherQuantities } from '@neckfall/engine';
import { useId } from 'preact/hooks';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Fold } from '../../controls/Fold.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { voice } from '../../state/settings.ts';

type Props = {
  id: string;
  title: string;
  found: FoundFile;
  corrections: WeatherCorrections;
  onCorrect: (corrections: WeatherCorrections) => void;
};

const temperatures = ['°C', '°F', 'K', '0.1 °C'];
const rains = ['mm', 'in', 'cm', '0.1 mm'];

/** Units that can be said of a quantity; those of dates have none. */
const units: Partial<Record<WeatherQuantity, readonly string[]>> = {
  tempMinC: temperatures,
  tempMaxC: temperatures,
  tempC: temperatures,
  rainMm: rains,
  rainDayMm: rains,
  rainSumMm: rains,
  solarMJ: ['MJ/m²', 'kWh/m²', 'Wh/m²', 'J/cm²', 'kJ/m²'],
};
const dateOrders = ['ymd', 'dmy', 'mdy'] as const;
const offsetsH = [-12, 14] as const;

/** What each column was taken for, to be put right by hand; after each change the file is read again. */
export function Columns({ id, title, found, corrections, onCorrect }: Props) {
  const { say } = voice.value;
  const taken = new Map(found.columns.map((column) => [column.column, column]));
  const names = [...taken.keys(), ...found.unused.filter((name) => !taken.has(name))];

  function correct(column: string, as: WeatherQuantity | null, unit: string | null): void {
    const others = corrections.columns.filter((other) => other.column !== column);
    onCorrect({ ...corrections, columns: [...others, { column, as, unit }] });
  }

  return (
    <Fold id={id} title={title}>
      <p class="hint">{say('app.weather.columns.hint')}</p>
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{say('app.weather.column')}</th>
              <th scope="col">{say('app.weather.column.is')}</th>
              <th scope="col">{say('app.weather.column.unit')}</th>
            </tr>
          </thead>
          <tbody>
            {names.map((name) => (
              <Column
                key={name}
                name={name}
                as={taken.get(name)?.as ?? null}
                unit={taken.get(name)?.unit ?? null}
                onCorrect={(as, unit) => correct(name, as, unit)}
              />
            ))}
          </tbody>
        </table>
      </div>
      <div class="form">
        {found.dateOrder !== null && (
          <ChoiceField
            label={say('app.weather.dates')}
            value={found.dateOrder}
            options={dateOrders.map((value) => ({ value, label: say(`app.weather.dates.${value}`) }))}
            onValue={(dateOrder) => onCorrect({ ...corrections, dateOrder })}
          />
        )}
        {(found.timeBase !== 'as-printed' || corrections.utcOffsetH !== null) && (
          <NumberField
            label={say('app.weather.offset')}
            hint={say('app.weather.offset.hint', { min: offsetsH[0], max: offsetsH[1] })}
            value={corrections.utcOffsetH}
            min={offsetsH[0]}
            max={offsetsH[1]}
            digits={2}
            onValue={(utcOffsetH) => onCorrect({ ...corrections, utcOffsetH })}
          />
        )}
      </div>
    </Fold>
  );
}

type ColumnProps = {
  name: string;
  as: WeatherQuantity | null;
  unit: string | null;
  onCorrect: (as: WeatherQuantity | null, unit: string | null) => void;
};

function Column({ name, as, unit, onCorrect }: ColumnProps) {
  const { say } = voice.value;
  const id = useId();
  const choices = as === null ? undefined : units[as];
  return (
    <tr>
      <th scope="row" id={id}>
        {name}
      </th>
      <td data-name={say('app.weather.column.is')}>
        <select
          aria-label={say('app.weather.column.is-of', { column: name })}
          value={as ?? 'none'}
          onChange={({ currentTarget: { value } }) =>
            onCorrect(weatherQuantities.find((quantity) => quantity === value) ?? null, null)
          }
        >
          {['none' as const, ...weatherQuantities].map((quantity) => (
            <option key={quantity} value={quantity}>
              {say(`app.weather.as.${quantity}`)}
            </option>
          ))}
        </select>
      </td>
      <td data-name={choices && say('app.weather.column.unit')}>
        {choices && (
          <select
            aria-label={say('app.weather.column.unit-of', { column: name })}
            value={unit ?? ''}
            onChange={({ currentTarget: { value } }) => onCorrect(as, value)}
          >
            {[...new Set([...(unit === null ? [''] : [unit]), ...choices])].map((choice) => (
              <option key={choice} value={choice}>
                {choice === '' ? say('app.weather.unit.guessed') : choice}
              </option>
            ))}
          </select>
        )}
      </td>
    </tr>
  );
}
