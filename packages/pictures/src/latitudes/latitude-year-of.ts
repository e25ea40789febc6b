import { type LatitudeTold, latitudeKindWords, latitudeSentences } from '@neckfall/answers';
import type { Speaker } from '@neckfall/words';
import type { DataTableProps } from '../drawing/data-table.tsx';
import { type CropMarkKind, cropLineOf, type YearLineProps, yearLineOf } from '../year-line/index.ts';
import type { Waterline } from './waterlines.tsx';

type LatitudeYearAnswer = {
  year: Omit<YearLineProps, 'id' | 'width'>;
  others: Waterline[];
  /** All five kinds: what they ask, when they have it, what they come to. */
  kinds: DataTableProps;
};

/** When days are long enough is told by the levels. */
const told: ReadonlySet<CropMarkKind> = new Set(['start', 'bulbs', 'tops']);

/** The year at a latitude with the chosen kind on it; the days that all kinds ask for are marked. */
export function latitudeYearOf(answer: LatitudeTold, speaker: Speaker): LatitudeYearAnswer {
  const { say } = speaker;
  const { kinds, chosen, days, year } = answer;
  const { summary, needSunUpH } = kinds[chosen];
  const crop = cropLineOf(summary, days, speaker);
  const marks = crop.marks.filter(({ kind }) => told.has(kind));
  const line = yearLineOf({ year, needSunUpH: null, today: null, crop: { ...crop, marks }, speaker });
  const [, said] = latitudeSentences(answer, speaker);
  return {
    year: {
      ...line,
      // the lesson is of days, in the tropics too; what each kind asks is written on its own line
      lead: 'days',
      rainMm: [],
      rainText: '',
      need: { hours: needSunUpH, text: '' },
      summary: `${line.summary} ${said}`,
    },
    others: kinds.map((kind, at) => ({
      hours: kind.needSunUpH,
      text: latitudeKindWords(kind, speaker),
      bold: at === chosen,
    })),
    kinds: {
      caption: say('picture.latitude.kinds'),
      head: [
        say('picture.latitude.column-kind'),
        say('picture.latitude.column-needs'),
        say('picture.latitude.column-long'),
        say('picture.latitude.column-bulbs'),
        say('picture.latitude.column-tops'),
        say('picture.latitude.column-comes'),
        say('picture.section.across'),
      ],
      rows: kinds.map(({ summary, needSunUpH, longEnough }) => [
        say(`type-head.${summary.plan.type}`),
        speaker.dayLength(Math.round(needSunUpH * 4) / 4),
        typeof longEnough === 'string'
          ? say(`latitude.days.${longEnough}`)
          : say('latitude.days.span', {
              from: speaker.day(longEnough.from),
              to: speaker.day(longEnough.to),
            }),
        summary.onset.days ? speaker.day(Math.round(summary.onset.days.p50)) : say('none'),
        summary.neckFall.days ? speaker.day(Math.round(summary.neckFall.days.p50)) : say('none'),
        say(`verdict.${summary.outcome}`),
        summary.bulbDiameterMm ? speaker.quantity('bulbLength', summary.bulbDiameterMm.p50) : say('none'),
      ]),
    },
  };
}
