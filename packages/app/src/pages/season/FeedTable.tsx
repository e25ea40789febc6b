import { feedRows, productName } from '@neckfall/answers';
import type { FeedAnswer, Plan } from '@neckfall/engine';
import { voice } from '../../state/settings.ts';

/** A row a feed; the bed's own column where its size is known. */
export function FeedTable({ feed, plan }: { feed: FeedAnswer; plan: Plan }) {
  const speaker = voice.value;
  const { say } = speaker;
  const rows = feedRows(feed, plan, speaker);
  const names = {
    date: say('feed.column.date'),
    nitrogen: say('feed.column.nitrogen'),
    rate: say('feed.column.rate', { product: productName(feed.product, speaker) }),
    ...(rows.some(({ bed }) => bed !== null) && { bed: say('feed.column.bed') }),
  };
  const columns = Object.entries(names) as [keyof typeof names & keyof (typeof rows)[number], string][];
  return (
    <div class="scroll">
      <table>
        <thead>
          <tr>
            <th scope="col">{say('feed.column.stage')}</th>
            {columns.map(([column, name]) => (
              <th key={column} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.number}>
              <th scope="row">{row.stage}</th>
              {columns.map(([column, name]) => (
                <td key={column} data-name={name}>
                  {row[column]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
