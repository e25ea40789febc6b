import { type DailyRecord, type RecordField, recordFields } from '@neckfall/engine';
import type { MessageKey } from '@neckfall/words';
import { voice } from '../../state/settings.ts';
import { exactly } from './exact.ts';

const shownDays = 10;
const heads = {
  tempMinC: 'app.weather.first.low',
  tempMaxC: 'app.weather.first.high',
  rainMm: 'app.weather.first.rain',
  solarMJ: 'app.weather.first.sun',
} as const satisfies Record<RecordField, MessageKey>;

/** The first days of a record as they were read, to be held against the file. */
export function FirstDays({ record }: { record: DailyRecord }) {
  const speaker = voice.value;
  const { say, day } = speaker;
  const { temp, rain, sun, tempUnit, rainUnit } = exactly(speaker);
  const fields = recordFields.filter((field) => record.known[field].includes(1));
  const write = { tempMinC: temp, tempMaxC: temp, rainMm: rain, solarMJ: sun };
  const head = (field: RecordField) => say(heads[field], { unit: field === 'rainMm' ? rainUnit : tempUnit });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard
    <section class="scroll" aria-labelledby="first-days" tabIndex={0}>
      <table>
        <caption id="first-days">{say('app.weather.first')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('app.weather.first.date')}</th>
            {fields.map((field) => (
              <th key={field} scope="col" class="figure">
                {head(field)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: Math.min(shownDays, record.days) }, (_, at) => (
            <tr key={record.firstDay + at}>
              <th scope="row">{day(record.firstDay + at)}</th>
              {fields.map((field) => (
                <td key={field} class="figure">
                  {record.known[field][at] === 1
                    ? write[field](record[field][at])
                    : say('app.weather.unknown')}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
