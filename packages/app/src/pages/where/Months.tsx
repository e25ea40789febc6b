import { monthsOf, type PlaceFacts } from '@neckfall/answers';
import { Fold } from '../../controls/Fold.tsx';
import { voice } from '../../state/settings.ts';

const columns = ['month', 'day', 'mean', 'low', 'high', 'rain', 'wet-days', 'frost'] as const;

/** The year month by month. */
export function Months({ facts }: { facts: PlaceFacts }) {
  const { say, month, dayLength, quantity, number } = voice.value;
  return (
    <Fold id="year" title={say('app.where.year')}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
      <section class="scroll" aria-label={say('app.where.year.caption')} tabIndex={0}>
        <table>
          <caption>{say('app.where.year.caption')}</caption>
          <thead>
            <tr>
              {columns.map((column) => (
                <th key={column} scope="col" class={column === 'month' ? '' : 'figure'}>
                  {say(`where.column.${column}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {monthsOf(facts).map((row) => (
              <tr key={row.month}>
                <th scope="row">{month(row.month)}</th>
                {[
                  dayLength(row.sunUpH),
                  quantity('temperature', row.tempMeanC),
                  quantity('temperature', row.tempMinC),
                  quantity('temperature', row.tempMaxC),
                  quantity('rain', row.rainMm),
                  number(row.wetDays),
                  number(row.frostNights),
                ].map((cell, at) => (
                  <td key={columns[at + 1]} class="figure" data-name={say(`where.column.${columns[at + 1]}`)}>
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </Fold>
  );
}
