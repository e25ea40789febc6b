import { leavesGoneSentence, plantSpreadSentence, seasonRows } from '@neckfall/answers';
import type { SeasonSummary } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { voice } from '../../state/settings.ts';

/** Dates and sizes: the middle, and where 8 years in 10 lie. Shares of plants and years stand apart, in Risks. */
export function Expect({ summary }: { summary: SeasonSummary }) {
  const speaker = voice.value;
  const { say } = speaker;
  const rows = seasonRows(summary, speaker).filter(
    ({ key }) => key !== 'season.row.bolted' && key !== 'season.row.winter-killed',
  );
  const notes = [leavesGoneSentence(summary, speaker), plantSpreadSentence(summary, speaker)];
  return (
    <Fold class="expect" id="expect" title={say('season.table')}>
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{say('app.season.dates.what')}</th>
              <th scope="col">{say('season.column.likely')}</th>
              <th scope="col">{say('season.column.range')}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ key, title, middle, range }) => (
              <tr key={key}>
                <th scope="row">{title}</th>
                <td data-name={say('season.column.likely')}>{middle}</td>
                <td data-name={say('season.column.range')}>{range}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {notes.map((note) => note !== null && <p key={note}>{note}</p>)}
    </Fold>
  );
}
