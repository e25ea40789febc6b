import { jobName, leafCheckSentence, seasonHeadline, seasonRows } from '@neckfall/answers';
import { parseDay } from '@neckfall/engine';
import { YearLine } from '@neckfall/pictures';
import { isPrinting } from '../../device/printing.ts';
import { onion } from '../../state/onion.ts';
import { placeName } from '../../state/place.ts';
import { marks } from '../../state/planting.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
import { sheetWork } from './jobs/shown-work.ts';
import { seasonYearLine } from './YearFigure.tsx';

/** Drawn a little wider than a sheet and put on it smaller, px. */
const paperWidth = 1260;

/** One sheet to pin in the shed: the year, its work with room to write, and what to see when. Made when it is printed. */
export function Sheet({ ahead }: { ahead: SeasonAhead }) {
  if (!isPrinting.value) return null;
  const speaker = voice.value;
  const { say, dayWithYear } = speaker;
  const { summary, leafCheckpoint } = ahead;
  const { plan } = summary;
  const { name } = onion.value;
  const work = sheetWork(ahead);
  return (
    <section class="sheet" aria-labelledby="sheet">
      <h1 id="sheet">{seasonHeadline(summary, name, placeName.value, speaker)}</h1>
      <p>
        {say('app.season.plan.is', {
          onion: name ?? say(`type.${plan.type}`),
          start: say(`start.${plan.start}`),
          date: dayWithYear(plan.startDay),
        })}{' '}
        {say('app.season.printed', { date: dayWithYear(today.value) })}
      </p>
      <YearLine id="sheet-year" width={paperWidth} {...seasonYearLine(ahead, work)} note={null} />
      <WorkTable ahead={ahead} />
      <h2>{say('app.work.sheet.see')}</h2>
      <p>
        {seasonRows(summary, speaker)
          .filter(({ key }) => seen.has(key))
          .map(({ title, middle, range }) =>
            say('app.work.sheet.seen', { title, middle, range: range || 'none' }),
          )
          .join(' ')}{' '}
        {leafCheckpoint && leafCheckSentence(leafCheckpoint, speaker)}
      </p>
    </section>
  );
}

const seen = new Set([
  'season.row.emergence',
  'season.row.sprouting',
  'season.row.onset',
  'season.row.leaves-green',
  'season.row.neck-fall',
  'season.row.diameter',
]);

function WorkTable({ ahead: { jobs } }: { ahead: SeasonAhead }) {
  const speaker = voice.value;
  const { say, day, dayRange } = speaker;
  const heads = ['number', 'days', 'what', 'done', 'note'] as const;
  const doneOn = (id: string) => {
    const mark = marks.value.findLast(({ job }) => job === id);
    const date = mark?.state === 'done' ? parseDay(mark.date) : null;
    return date === null ? '' : day(date);
  };
  return (
    <table style={{ '--rows': jobs.length }}>
      <thead>
        <tr>
          {heads.map((head) => (
            <th key={head} scope="col">
              {say(`app.work.sheet.${head}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {jobs.map((job, at) => (
          <tr key={job.id}>
            <td>{at + 1}</td>
            <td>{dayRange(job.from, job.to)}</td>
            <td>{jobName(job, speaker)}</td>
            <td>{doneOn(job.id)}</td>
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}
