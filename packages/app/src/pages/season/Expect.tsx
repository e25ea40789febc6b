import { leavesGoneSentence, plantSpreadSentence, seasonRows } from '@neckfall/answers';
import type { SeasonSummary } from '@neckfall/engine';
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
    <section class="expect" aria-labelledby="expect">
      <h2 id="expect">{say('season.table')}</h2>
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
              <td>{middle}</td>
              <td>{range}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {notes.map((note) => note !== null && <p key={note}>{note}</p>)}
    </section>
  );
}
