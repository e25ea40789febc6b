import type { DayNumber, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { comingDay, type SeasonRowKey, seasonRows } from '../sentences/index.ts';
import type { HandoutWhen } from './handout.ts';

const told: ReadonlySet<SeasonRowKey> = new Set<SeasonRowKey>([
  'season.row.emergence',
  'season.row.sprouting',
  'season.row.plant-out',
  'season.row.onset',
  'season.row.neck-fall',
  'season.row.diameter',
]);

/** The dates of a crop in the order in which they come, and the size of its bulbs. */
export function handoutWhen(summary: SeasonSummary, today: DayNumber, speaker: Speaker): HandoutWhen[] {
  const { plan } = summary;
  const start = {
    what: speaker.say(`handout.start.${plan.start}`),
    middle: comingDay(plan.startDay, today, speaker),
    range: '',
  };
  const rows = seasonRows(summary, speaker).filter(({ key }) => told.has(key));
  return [start, ...rows.map(({ title, middle, range }) => ({ what: title, middle, range }))];
}
