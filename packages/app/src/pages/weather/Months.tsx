import type { DailyRecord, WeatherSeries } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { monthsTable } from './months-table.ts';

type Props = {
  record: DailyRecord;
  usual: WeatherSeries;
  /** Days measured, from its first on: a forecast is none of them. */
  days: number;
};

/** The numbers of the picture, a month a row, over the days measured. */
export function Months({ record, usual, days }: Props) {
  const {
    caption,
    head: [first, ...heads],
    rows,
  } = monthsTable(record, usual, days);
  return (
    <Fold id="weather-months" title={caption}>
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{first}</th>
              {heads.map((head) => (
                <th key={head} scope="col" class="figure">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(([month, ...cells]) => (
              <tr key={month}>
                <th scope="row">{month}</th>
                {cells.map((cell, at) => (
                  <td key={heads[at]} class="figure" data-name={heads[at]}>
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Fold>
  );
}
