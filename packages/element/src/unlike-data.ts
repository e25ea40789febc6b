import { formatDay } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Asked } from './read-attributes.ts';
import type { YearDocument } from './read-year.ts';

/** So far from the place of the data a point is another place, degrees. */
const nearDeg = 0.5;

/** Where attributes and data speak of different things, the picture would say what is not so: a sentence, or null. */
export function unlikeData(asked: Asked, found: YearDocument, { say }: Speaker): string | null {
  const { crop } = found;
  const start = crop?.marks.find(({ kind }) => kind === 'start')?.day ?? null;
  const isFar = (a: number | null, b: number) => a !== null && Math.abs(a - b) > nearDeg;
  const differs = (a: unknown, b: unknown) => a !== null && a !== b;
  const rows: [string, boolean, string | number | null][] = [
    ['latitude', isFar(asked.latitudeDeg, found.latitudeDeg), found.latitudeDeg],
    ['longitude', isFar(asked.longitudeDeg, found.longitudeDeg), found.longitudeDeg],
    ['class', differs(asked.class, found.class), found.class],
    ['start', differs(asked.start, crop?.start ?? null), crop?.start ?? null],
    ['date', differs(asked.startDay, start), start === null ? null : formatDay(start)],
  ];
  const [attribute, , value] = rows.find(([, isOther]) => isOther) ?? [];
  if (attribute === undefined) return null;
  return say('element.other-data', { attribute, found: String(value ?? say('none')) });
}
