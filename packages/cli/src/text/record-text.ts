import { type Observation, parseDay } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Held } from '../documents/record-document.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

/** Longer notes are cut in the table, characters; the file has all of them. */
const longestShown = 60;

type Cell = (entry: Observation, speaker: Speaker) => string | null;

const count =
  (
    field:
      | 'lookedAt'
      | 'standCount'
      | 'floweringCount'
      | 'bulbCount'
      | 'thickNeckCount'
      | 'soundCount'
      | 'sproutedCount'
      | 'rottenCount',
  ): Cell =>
  (entry, { number }) => {
    const value = entry[field];
    return value === undefined ? null : number(value);
  };
const measure =
  (
    field: 'neckMm' | 'bulbMm' | 'wateredLitres' | 'weighedKg',
    kind: Parameters<Speaker['quantity']>[0],
  ): Cell =>
  (entry, { quantity }) => {
    const value = entry[field];
    return value === undefined ? null : quantity(kind, value);
  };

/** Columns in the order of a season. */
const cells = {
  leavesGreen: ({ leavesGreen }, { number }) => (leavesGreen === undefined ? null : number(leavesGreen, 1)),
  neckMm: measure('neckMm', 'bulbLength'),
  bulbMm: measure('bulbMm', 'bulbLength'),
  lookedAt: count('lookedAt'),
  standCount: count('standCount'),
  floweringCount: count('floweringCount'),
  topsOverShare: ({ topsOverShare: share }, { number, say }) =>
    share === undefined ? null : say('record.percent', { percent: number(100 * share) }),
  wateredLitres: measure('wateredLitres', 'water'),
  fed: ({ fedProduct, fedG }, { quantity, say }) => {
    const weight = fedG === undefined ? null : quantity('bulbMass', fedG);
    return fedProduct === undefined || weight === null
      ? (fedProduct ?? weight)
      : say('record.fed', { product: fedProduct, weight });
  },
  lifted: ({ lifted }, { say }) => (lifted ? say('record.yes') : null),
  weighedKg: measure('weighedKg', 'crop'),
  bulbCount: count('bulbCount'),
  thickNeckCount: count('thickNeckCount'),
  soundCount: count('soundCount'),
  sproutedCount: count('sproutedCount'),
  rottenCount: count('rottenCount'),
  note: ({ note }) =>
    note !== undefined && note.length > longestShown ? `${note.slice(0, longestShown)}…` : (note ?? null),
} as const satisfies Record<string, Cell>;

/** What the file now holds of the planting: a line a day, a column for all that was ever noted. */
export function recordText({ file, planting, held, recorded }: Held, speaker: Speaker): string {
  const { say, dayWithYear } = speaker;
  const when = (date: string) => dayWithYear(parseDay(date) ?? 0);
  const columns = (Object.keys(cells) as (keyof typeof cells)[])
    .map((name) => ({ name, cells: held.map((entry) => (cells[name] as Cell)(entry, speaker)) }))
    .filter((column) => column.cells.some((cell) => cell !== null));
  const values = { name: planting.name, count: held.length, file, when: when(recorded.date) };
  return [
    wrap(say('record.held', values)),
    '',
    table(
      [
        { title: say('record.column.date') },
        ...columns.map(({ name }) => ({ title: say(`record.column.${name}`), right: name !== 'note' })),
      ],
      held.map((entry, at) => [when(entry.date), ...columns.map((column) => column.cells[at] ?? '')]),
    ),
    '',
  ].join('\n');
}
