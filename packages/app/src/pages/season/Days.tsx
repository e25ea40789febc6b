import type { DayRow } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { voice } from '../../state/settings.ts';

const columns = ['date', 'sun-up', 'mean', 'leaves', 'bulb'] as const;

/** The middling season day by day; hundreds of rows, so they are made when asked for. */
export function Days({ days }: { days: readonly DayRow[] }) {
  const { say } = voice.value;
  const [isOpen, open] = useState(false);
  if (days.length === 0) return null;
  return (
    <details class="days" onToggle={(event) => open(event.currentTarget.open)}>
      <summary id="day-by-day">{say('app.season.days.open', { count: days.length })}</summary>
      {isOpen && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard
        <section class="scroll tall" aria-labelledby="day-by-day" tabIndex={0}>
          <Table days={days} />
        </section>
      )}
    </details>
  );
}

function Table({ days }: { days: readonly DayRow[] }) {
  const { say, day, dayLength, quantity, number } = voice.value;
  return (
    <table>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column} scope="col" class={column === 'date' ? '' : 'figure'}>
              {say(`season.day.${column}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {days.map((row) => (
          <tr key={row.day}>
            <th scope="row">{day(row.day)}</th>
            {[
              dayLength(row.sunUpH),
              quantity('temperature', row.tempMeanC),
              number(row.leavesGreen),
              quantity('bulbMass', row.bulbG),
            ].map((cell, at) => (
              <td key={columns[at + 1]} class="figure" data-name={say(`season.day.${columns[at + 1]}`)}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
