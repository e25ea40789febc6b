import { coordinateWords } from '@neckfall/answers';
import type { FlaggedValue, FoundFile, RecordField, WeatherReading } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { shortName } from '../files/weather-texts.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

/** Doubtful values and unused columns named one by one; the others are counted. */
const mostNamed = 8;

/** What files of weather were found to be. @param assumed sentences of How we know */
export function weatherText(reading: WeatherReading, assumed: readonly string[], speaker: Speaker): string {
  const { files } = reading;
  const { say } = speaker;
  return [
    wrap(headline(reading, speaker)),
    ...files.map((file) => wrap(fileSentence(file, files.length, speaker))),
    '',
    totalsTable(reading, speaker),
    '',
    say('record.columns', { files: files.length }),
    columnsTable(files, speaker),
    ...files.filter(({ unused }) => unused.length > 0).map((file) => wrap(unusedSentence(file, speaker))),
    '',
    ...doubts(reading, speaker),
    say('how.title'),
    ...assumed.map((line) => `  ${wrap(line, 2)}`),
    '',
  ].join('\n');
}

function headline({ files, record, daysWithRow, typicalYear }: WeatherReading, speaker: Speaker): string {
  const { say, dayWithYear } = speaker;
  const values = { file: shortName(files[0].file), files: files.length };
  if (typicalYear) return say('record.headline-typical', values);
  return say('record.headline', {
    ...values,
    days: record.days,
    absent: record.days - daysWithRow,
    from: dayWithYear(record.firstDay),
    to: dayWithYear(record.firstDay + record.days - 1),
  });
}

function fileSentence({ file, format, station }: FoundFile, files: number, speaker: Speaker): string {
  const { say, quantity } = speaker;
  const { name = null, latitudeDeg = null, longitudeDeg = null, elevationM = null } = station ?? {};
  const isPlaced = latitudeDeg !== null && longitudeDeg !== null;
  return say('record.file', {
    files,
    file: shortName(file),
    format: say(`record.format.${format}`),
    named: name === null ? 'no' : 'yes',
    station: name ?? '',
    placed: isPlaced ? 'yes' : 'no',
    ...coordinateWords({ latitudeDeg: latitudeDeg ?? 0, longitudeDeg: longitudeDeg ?? 0 }, speaker),
    elevation: elevationM === null ? 'none' : quantity('elevation', elevationM),
  });
}

function totalsTable({ totals }: WeatherReading, speaker: Speaker): string {
  const { say, number, quantity } = speaker;
  const { known, missing } = totals;
  const temperature = (value: number | null) => (value === null ? '' : quantity('dayTemperature', value));
  const row = (field: RecordField, mean: string, furthest: string) => [
    say(`record.field.${field}`),
    number(known[field]),
    number(missing[field]),
    mean,
    furthest,
  ];
  return table(
    (['value', 'days', 'missing', 'mean', 'most'] as const).map((title) => ({
      title: say(`record.column.${title}`),
      right: title !== 'value',
    })),
    [
      row('tempMaxC', temperature(totals.meanTempMaxC), temperature(totals.highestC)),
      row('tempMinC', temperature(totals.meanTempMinC), temperature(totals.lowestC)),
      row(
        'rainMm',
        '',
        totals.rainTotalMm === null
          ? ''
          : say('record.rain-in-all', { rain: quantity('rain', totals.rainTotalMm) }),
      ),
      ...(known.solarMJ > 0 ? [row('solarMJ', '', '')] : []),
    ],
  );
}

function columnsTable(files: readonly FoundFile[], { say }: Speaker): string {
  const rows = files.flatMap(({ file, columns }) =>
    columns.map(({ column, as, unit }) => ({ file, cells: [column, say(`record.as.${as}`), unit ?? ''] })),
  );
  const titles = (['name', 'as', 'unit'] as const).map((title) => ({ title: say(`record.column.${title}`) }));
  if (files.length === 1)
    return table(
      titles,
      rows.map(({ cells }) => cells),
    );
  return table(
    [{ title: say('record.column.file') }, ...titles],
    rows.map(({ file, cells }) => [shortName(file), ...cells]),
  );
}

function unusedSentence({ file, unused }: FoundFile, { say, all }: Speaker): string {
  const more = unused.length - mostNamed;
  const names = unused.slice(0, more > 1 ? mostNamed : unused.length);
  return say('record.unused', {
    file: shortName(file),
    names: more > 1 ? names.join(', ') : all(names),
    more: Math.max(0, unused.length - names.length),
  });
}

function doubts({ files, typicalYear }: WeatherReading, speaker: Speaker): string[] {
  const { say } = speaker;
  const flagged = files.flatMap((file) => file.flagged);
  const count = files.reduce((sum, file) => sum + file.flaggedCount, 0);
  if (count === 0) return [wrap(say('record.no-doubts')), ''];
  const shown = flagged.slice(0, mostNamed);
  return [
    say('record.doubts', { count }),
    ...shown.map((value) => `  ${wrap(doubtSentence(value, typicalYear, speaker), 2)}`),
    ...(count > shown.length ? [`  ${say('record.doubts-more', { count: count - shown.length })}`] : []),
    '',
  ];
}

function doubtSentence(
  { day, field, value, why, leftOut }: FlaggedValue,
  isTypical: boolean,
  { say, quantity, number, day: dayOnly, dayWithYear }: Speaker,
): string {
  return say('record.doubt', {
    date: isTypical ? dayOnly(day) : dayWithYear(day),
    field: say(`record.field.${field}`),
    value:
      field === 'rainMm'
        ? quantity('dayRain', value)
        : field === 'solarMJ'
          ? say('record.sun', { sun: number(value, 1) })
          : quantity('dayTemperature', value),
    why: say(`record.why.${why}`),
    leftOut: leftOut ? 'yes' : 'no',
  });
}
