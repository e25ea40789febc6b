import { statSync } from 'node:fs';
import { calendarText, renewed, sequenceOf } from '@neckfall/answers';
import { formatDay } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { readBounded } from '../files/read-bounded.ts';
import { refusing } from '../output/out-refusal.ts';
import { type WholeFile, wholeFile } from '../output/whole-file.ts';
import { refuse } from '../refusal/refusal.ts';
import type { CropAtWork } from './crops-at-work.ts';

const field = '--ics';
/** A calendar of ours is far smaller, bytes. */
const mostBytes = 32_000_000;

/** The calendar file in the making: it renews what an earlier one told of the same work. */
export function calendarDraft(
  path: string,
  crops: readonly CropAtWork[],
  today: number,
  speaker: Speaker,
): Pick<WholeFile, 'keep' | 'drop'> {
  const told = crops.map((crop) => ({
    id: idOf(crop),
    name: crop.planting?.name ?? crop.frame.label,
    summary: crop.crop.summary,
    jobs: crop.jobs,
  }));
  const make = (sequence: number) => calendarText(told, { today, sequence }, speaker);
  const file = wholeFile(path, field);
  try {
    file.write(renewed(earlier(path), sequenceOf(today), make));
  } catch (error) {
    file.drop();
    throw error;
  }
  return { keep: () => file.keep(), drop: file.drop };
}

/** A plan of the command line has no id: what it was asked by names it. */
function idOf({ planting, crop: { plan, site } }: CropAtWork): string {
  if (planting) return planting.id;
  const { latitudeDeg, longitudeDeg } = site.climate;
  const point = [latitudeDeg, longitudeDeg].map((degrees) => degrees.toFixed(2)).join('_');
  return ['plan', point, plan.type, plan.start, formatDay(plan.startDay)].join('_');
}

/** What stands there now; anything but a calendar of this program would be lost, and is refused. */
function earlier(path: string): string | null {
  const found = refusing(path, () => statSync(path, { throwIfNoEntry: false }), field);
  if (!found) return null;
  if (!found.isFile()) throw refuse('ics-no-file', { field, exit: 3, values: { value: path } });
  const text = refusing(path, () => readBounded(path, mostBytes), field)?.toString('utf8') ?? '';
  const events = text.replace(/\r?\n[ \t]/g, '').match(/^UID:.*$/gm) ?? [];
  const isOurs =
    text.startsWith('BEGIN:VCALENDAR') && events.every((line) => line.trim().endsWith('@neckfall'));
  if (!isOurs && text.trim() !== '') throw refuse('ics-other', { field, exit: 3, values: { value: path } });
  return text;
}
