import type { CropLine, DataTableProps } from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import type { SkyYear } from './sky-year.ts';

/** What becomes of the crop, a mark a row. */
export function cropTable({ marks }: CropLine, { say, dayRange }: Speaker): DataTableProps {
  return {
    caption: say('element.crop'),
    head: [say('element.crop.what'), say('element.crop.range')],
    rows: marks.map(({ text, span }) => [text, span === null ? '' : dayRange(span.from, span.to)]),
  };
}

/** What each class asks of the days here, and which days have it. */
export function needTable(
  { firstDay, sunUpH }: Pick<SkyYear, 'firstDay' | 'sunUpH'>,
  needs: SkyYear['needs'],
  { say, dayLength, day }: Speaker,
): DataTableProps {
  return {
    caption: say('element.needs'),
    head: [say('element.needs.class'), say('element.needs.hours'), say('element.needs.days')],
    rows: needs.map(({ class: one, hours }) => {
      const long = sunUpH.flatMap((length, at) => (length >= hours ? [firstDay + at] : []));
      const words =
        long.length === 0
          ? say('element.needs.never')
          : long.length === sunUpH.length
            ? say('element.needs.always')
            : say('element.needs.count', { count: long.length, longest: day(longest(sunUpH, firstDay)) });
      return [say(`class.${one}`), dayLength(Math.round(hours * 4) / 4), words];
    }),
  };
}

function longest(sunUpH: readonly number[], firstDay: number): number {
  return firstDay + sunUpH.indexOf(Math.max(...sunUpH));
}
