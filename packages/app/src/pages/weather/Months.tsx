import { civilDate, climateDayOf, type DailyRecord, type WeatherSeries } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { voice } from '../../state/settings.ts';
import { exactly } from './exact.ts';

type Props = {
  record: DailyRecord;
  usual: WeatherSeries;
  /** Days measured, from its first on: a forecast is none of them. */
  days: number;
};

type Month = {
  year: number;
  month: number;
  tempDays: number;
  sumC: number;
  usualC: number;
  rainDays: number;
  rainMm: number;
  usualMm: number;
};

/** The numbers of the picture, a month a row, over the days measured. */
export function Months({ record, usual, days }: Props) {
  const speaker = voice.value;
  const { say, monthWithYear } = speaker;
  const { temp, rain, tempUnit, rainUnit } = exactly(speaker);
  const heads = [
    say('app.weather.month.days'),
    say('app.weather.month.mean', { unit: tempUnit }),
    say('app.weather.month.usual-mean', { unit: tempUnit }),
    say('app.weather.month.rain', { unit: rainUnit }),
    say('app.weather.month.usual-rain', { unit: rainUnit }),
  ];
  const none = say('app.weather.unknown');
  return (
    <Fold id="weather-months" title={say('app.weather.months')}>
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{say('app.weather.month')}</th>
              {heads.map((head) => (
                <th key={head} scope="col" class="figure">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {monthsOf(record, usual, days).map(
              ({ year, month, tempDays, sumC, usualC, rainDays, rainMm, usualMm }) => (
                <tr key={`${year} ${month}`}>
                  <th scope="row">{monthWithYear(year, month)}</th>
                  {[
                    speaker.number(tempDays),
                    tempDays > 0 ? temp(sumC / tempDays) : none,
                    tempDays > 0 ? temp(usualC / tempDays) : none,
                    rainDays > 0 ? rain(rainMm) : none,
                    rainDays > 0 ? rain(usualMm) : none,
                  ].map((cell, at) => (
                    <td key={heads[at]} class="figure" data-name={heads[at]}>
                      {cell}
                    </td>
                  ))}
                </tr>
              ),
            )}
          </tbody>
        </table>
      </div>
    </Fold>
  );
}

function monthsOf({ firstDay, known, ...values }: DailyRecord, usual: WeatherSeries, days: number): Month[] {
  const months: Month[] = [];
  for (let at = 0; at < days; at++) {
    const { year, month } = civilDate(firstDay + at);
    let row = months.at(-1);
    if (row?.month !== month) {
      row = { year, month, tempDays: 0, sumC: 0, usualC: 0, rainDays: 0, rainMm: 0, usualMm: 0 };
      months.push(row);
    }
    const day = climateDayOf(firstDay + at);
    if (known.tempMinC[at] === 1 && known.tempMaxC[at] === 1) {
      row.tempDays++;
      row.sumC += (values.tempMinC[at] + values.tempMaxC[at]) / 2;
      row.usualC += (usual.tempMinC[day] + usual.tempMaxC[day]) / 2;
    }
    if (known.rainMm[at] === 1) {
      row.rainDays++;
      row.rainMm += values.rainMm[at];
      row.usualMm += usual.rainMm[day];
    }
  }
  return months;
}
