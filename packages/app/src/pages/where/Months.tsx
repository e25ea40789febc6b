import { monthsOf, type PlaceFacts } from '@neckfall/answers';
import { voice } from '../../state/settings.ts';

const columns = ['month', 'day', 'mean', 'low', 'high', 'rain', 'wet-days', 'frost'] as const;

/** The year month by month. */
export function Months({ facts }: { facts: PlaceFacts }) {
  const { say, month, dayLength, quantity, number } = voice.value;
  return (
    <div>
      <h2 id="year">{say('app.where.year')}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
      <section class="scroll" aria-labelledby="year" tabIndex={0}>
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
                <td class="figure">{dayLength(row.sunUpH)}</td>
                <td class="figure">{quantity('temperature', row.tempMeanC)}</td>
                <td class="figure">{quantity('temperature', row.tempMinC)}</td>
                <td class="figure">{quantity('temperature', row.tempMaxC)}</td>
                <td class="figure">{quantity('rain', row.rainMm)}</td>
                <td class="figure">{number(row.wetDays)}</td>
                <td class="figure">{number(row.frostNights)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </div>
  );
}
