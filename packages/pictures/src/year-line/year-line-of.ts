import type { PlaceYear } from '@neckfall/answers';
import { civilDate } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { DataTableProps } from '../drawing/data-table.tsx';
import { mmPerStroke } from '../drawing/rain-strokes.ts';
import { hotC, runsOf } from './year-layout.ts';
import type { CropLine, WorkMark, YearLineProps } from './year-line-props.ts';

export type YearLineInput = {
  year: PlaceYear;
  /** Sun-up hours the onion needs (see neededSunUpH); null: none in question. */
  needSunUpH: number | null;
  /** Day number; null: none to be marked. */
  today: number | null;
  crop: CropLine | null;
  speaker: Speaker;
};

/** Days that differ less than this over the year say little to an onion's grower, h. */
const flatYearH = 2;
const commonFrostNights = 5;

/** All a year line needs but its id and width. */
export function yearLineOf(input: YearLineInput): Omit<YearLineProps, 'id' | 'width'> {
  const { year, needSunUpH, today, crop, speaker } = input;
  const { say, quantity } = speaker;
  const { firstDay, sunUpH, rainMm, frostShare, highC } = year;
  const hottest = Math.max(...highC);
  return {
    summary: summaryOf(input),
    note: needSunUpH === null ? null : needSentence(year, needSunUpH, speaker),
    firstDay,
    sunUpH,
    rainMm,
    frostShare,
    highC,
    need: needSunUpH === null ? null : { hours: needSunUpH, text: needText(needSunUpH, speaker) },
    dayTexts: dayTexts(year, speaker),
    today: todayText(today, speaker),
    months: monthNames(speaker),
    frostText: say('picture.frost'),
    heatText: say('picture.heat', { temperature: quantity('temperature', hottest) }),
    rainText: say('picture.rain-key', { amount: quantity('rain', mmPerStroke) }),
    lead: isFlat(year) ? 'weather' : 'days',
    crop,
  };
}

/** Day lengths, day by day from `firstDay` on. */
type Days = Pick<PlaceYear, 'firstDay' | 'sunUpH'>;

function dayTexts({ firstDay, sunUpH: hours }: Days, speaker: Speaker): YearLineProps['dayTexts'] {
  const { say, dayLength } = speaker;
  const high = indexOfExtreme(hours, 1);
  const low = indexOfExtreme(hours, -1);
  if (isFlat({ sunUpH: hours })) {
    const text = say('picture.days-alike', {
      shortest: dayLength(hours[low]),
      longest: dayLength(hours[high]),
    });
    return [{ day: firstDay + Math.floor(hours.length / 2), text, place: 'foot' }];
  }
  return [
    hours[high] === 24
      ? { day: firstDay + middleOfWidest(hours, 24), text: say('picture.sun-stays-up'), place: 'peak' }
      : {
          day: firstDay + high,
          text: say('picture.longest', { hours: dayLength(hours[high]) }),
          place: 'peak',
        },
    hours[low] === 0
      ? { day: firstDay + middleOfWidest(hours, 0), text: say('picture.sun-stays-down'), place: 'trough' }
      : {
          day: firstDay + low,
          text: say('picture.shortest', { hours: dayLength(hours[low]) }),
          place: 'trough',
        },
  ];
}

function todayText(today: number | null, { say, day }: Speaker): YearLineProps['today'] {
  return today === null ? null : { day: today, text: say('picture.today', { date: day(today) }) };
}

const monthNames = ({ month }: Speaker) => Array.from({ length: 12 }, (_, at) => month(at + 1));

export type SkyLineInput = Days & Omit<YearLineInput, 'year'>;

/** The same of day lengths alone, where neither weather nor a season is known. */
export function skyLineOf(input: SkyLineInput): Omit<YearLineProps, 'id' | 'width'> {
  const { firstDay, sunUpH, needSunUpH, today, crop, speaker } = input;
  const none = sunUpH.map(() => 0);
  const sentences = [
    daysSentence(input, speaker),
    ...(needSunUpH === null ? [] : [needSentence(input, needSunUpH, speaker)]),
    ...(crop === null ? [] : [cropSentence(crop, speaker)]),
  ];
  return {
    summary: sentences.join(' '),
    note: needSunUpH === null ? null : needSentence(input, needSunUpH, speaker),
    firstDay,
    sunUpH,
    rainMm: none,
    frostShare: none,
    highC: none,
    need: needSunUpH === null ? null : { hours: needSunUpH, text: needText(needSunUpH, speaker) },
    dayTexts: dayTexts(input, speaker),
    today: todayText(today, speaker),
    months: monthNames(speaker),
    frostText: '',
    heatText: '',
    rainText: null,
    lead: 'days',
    crop,
  };
}

/** The same year as a table, a month a row from the first of the picture on. */
export function yearTableOf({ year, speaker }: Pick<YearLineInput, 'year' | 'speaker'>): DataTableProps {
  const { say } = speaker;
  const first = civilDate(year.firstDay).month - 1;
  return {
    caption: say('picture.year.table'),
    head: [
      say('picture.year.month'),
      say('picture.year.sun-up'),
      say('picture.year.rain-column'),
      say('picture.year.frost-column'),
      say('picture.year.high-column'),
    ],
    rows: year.months.map((_, i) => {
      const month = (first + i) % 12;
      const { sunUpH, rainMm, frostNights, highC } = year.months[month];
      return [
        speaker.month(month + 1),
        speaker.dayLength(sunUpH),
        speaker.quantity('rain', rainMm),
        speaker.number(frostNights),
        speaker.quantity('temperature', highC),
      ];
    }),
  };
}

/** The work marked on it as a table, a piece a row. */
export function workTableOf({ work }: CropLine, { say, day }: Speaker): DataTableProps {
  return {
    caption: say('app.work.table'),
    head: [say('app.work.table.number'), say('app.work.table.day'), say('app.work.table.what')],
    rows: work.map(({ number, day: on, text }) => [`${number}`, day(on), text]),
  };
}

function markWords({ number, day, text }: WorkMark, speaker: Speaker): string {
  return speaker.say('app.work.mark', { number, what: text, date: speaker.day(day) });
}

/** To a quarter of an hour: no packet and no grower knows it closer. */
function needText(hours: number, { say, dayLength }: Speaker): string {
  return say('picture.needs', { hours: dayLength(Math.round(hours * 4) / 4) });
}

function summaryOf({ year, needSunUpH, crop, speaker }: YearLineInput): string {
  const { say, all, quantity, month } = speaker;
  const { months } = year;
  const rain = months.map(({ rainMm }) => rainMm);
  const wet = indexOfExtreme(rain, 1);
  const dry = indexOfExtreme(rain, -1);
  const names = (holds: (m: PlaceYear['months'][number]) => boolean) =>
    all(months.flatMap((m, i) => (holds(m) ? [month(i + 1)] : [])));
  const frosty = names(({ frostNights }) => frostNights >= commonFrostNights);
  const hot = names(({ highC }) => highC >= hotC);
  const sentences = [
    daysSentence(year, speaker),
    say('picture.year.rain', {
      wettest: month(wet + 1),
      most: quantity('rain', rain[wet]),
      driest: month(dry + 1),
      least: quantity('rain', rain[dry]),
    }),
    frosty === '' ? say('picture.year.no-frost') : say('picture.year.frost', { months: frosty }),
  ];
  if (hot !== '')
    sentences.push(say('picture.year.heat', { limit: quantity('temperature', hotC), months: hot }));
  if (needSunUpH !== null) sentences.push(needSentence(year, needSunUpH, speaker));
  if (crop) sentences.push(cropSentence(crop, speaker));
  if (crop && crop.counted.length > 0)
    sentences.push(say('app.seen.marks', { counts: all(crop.counted.map(({ text }) => text)) }));
  if (crop && crop.work.length > 0)
    sentences.push(say('app.work.marks', { work: all(crop.work.map((work) => markWords(work, speaker))) }));
  return sentences.join(' ');
}

function daysSentence({ firstDay, sunUpH }: Days, { say, dayLength, day }: Speaker): string {
  const high = indexOfExtreme(sunUpH, 1);
  const low = indexOfExtreme(sunUpH, -1);
  const [shortest, longest] = [sunUpH[low], sunUpH[high]].map(dayLength);
  if (isFlat({ sunUpH })) return say('picture.year.days-alike', { shortest, longest });
  return say('picture.year.days', {
    longest,
    longestDate: day(firstDay + high),
    shortest,
    shortestDate: day(firstDay + low),
  });
}

const cropSentence = ({ marks }: CropLine, { say, all }: Speaker) =>
  say('picture.year.crop', { marks: all(marks.map(({ text }) => text)) });

function needSentence({ firstDay, sunUpH }: Days, need: number, { say, dayLength, day }: Speaker): string {
  const hours = dayLength(Math.round(need * 4) / 4);
  const runs = runsOf(sunUpH.length, (i) => sunUpH[i] >= need);
  if (runs.length === 0) return say('picture.year.need-never', { hours });
  const { first, last } = runs[0];
  if (first === 0 && last === sunUpH.length - 1) return say('picture.year.need-always', { hours });
  // a year that begins with long days holds the end of one stretch and the start of the next
  const from = first === 0 && runs.length > 1 ? runs[1].first : first;
  return say('picture.year.need', { hours, from: day(firstDay + from), to: day(firstDay + last) });
}

function isFlat({ sunUpH }: Pick<PlaceYear, 'sunUpH'>): boolean {
  return Math.max(...sunUpH) - Math.min(...sunUpH) < flatYearH;
}

function indexOfExtreme(values: readonly number[], sign: 1 | -1): number {
  let best = 0;
  for (let i = 1; i < values.length; i++) if (sign * values[i] > sign * values[best]) best = i;
  return best;
}

function middleOfWidest(hours: readonly number[], value: number): number {
  const runs = runsOf(hours.length, (i) => hours[i] === value);
  const widest = runs.reduce((a, b) => (b.last - b.first > a.last - a.first ? b : a));
  return (widest.first + widest.last) >> 1;
}
