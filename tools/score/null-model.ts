import type { CalendarRow } from './calendar-rows.ts';
import { type Miss, missOf } from './timing.ts';

/** The day a row's crop starts growing in its bed or tray, as the calendar prints it: the middle of its window. */
function startMiddle(row: CalendarRow): number {
  const window = row.startWindow ?? row.plantOutWindow;
  if (!window) throw new Error(`${row.id}: no start window`);
  return (window.from + window.to) / 2;
}

/**
 * What a packet does: the median duration of the other rows of the same class and method, counted from the
 * middle of the start window (leave one out). Rows alone in their group are compared with their method.
 */
export function nullMisses(rows: readonly CalendarRow[]): Miss[] {
  const timed = rows.map((row) => {
    const { from, to } = row.harvestWindow!;
    const days = (from + to) / 2 - startMiddle(row);
    return { row, group: groupOf(row), days: days - 365 * Math.floor(days / 365) };
  });
  return timed.map(({ row, group }) => {
    const others = timed.filter((o) => o.row !== row && o.group === group);
    const pool = others.length > 0 ? others : timed.filter((o) => o.row !== row && o.row.start === row.start);
    const days = pool.map((o) => o.days).sort((a, b) => a - b);
    const median = days.length === 0 ? null : (days[(days.length - 1) >> 1] + days[days.length >> 1]) / 2;
    return missOf(row, row.harvestWindow!, median === null ? null : startMiddle(row) + median);
  });
}

function groupOf(row: CalendarRow): string {
  return `${row.class} ${row.start} ${row.startWindow ? 'sown' : 'set out'}`;
}
