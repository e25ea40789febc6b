import type { ComponentChildren } from 'preact';
import { voice } from '../../state/settings.ts';
import type { Crop, startFactRows } from './facts-of.ts';

/** A crop at the head of a column: a key of its own, its name, and what goes under its facts. */
type Column = { key: string; head: string; crop: Crop; foot: ComponentChildren; isChosen?: boolean };

type Props = { labelledBy: string; rows: typeof startFactRows; columns: readonly Column[] };

/** Crops side by side, a fact a row. */
export function FactTable({ labelledBy, rows, columns }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard
    <section class="scroll" aria-labelledby={labelledBy} tabIndex={0}>
      <table class="facts">
        <thead>
          <tr>
            <th scope="col">{say('app.which.beside.fact')}</th>
            {columns.map(({ key, head, isChosen }) => (
              <th key={key} scope="col" class={isChosen ? 'chosen' : ''}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([row, words]) => (
            <tr key={row}>
              <th scope="row">{say(row)}</th>
              {columns.map(({ key, head, crop }) => (
                <td key={key} data-name={head}>
                  {words(crop, speaker)}
                </td>
              ))}
            </tr>
          ))}
          <tr class="controls">
            <th scope="row">{say('app.where.next')}</th>
            {columns.map(({ key, head, foot }) => (
              <td key={key} data-name={head}>
                {foot}
              </td>
            ))}
          </tr>
        </tbody>
      </table>
    </section>
  );
}
