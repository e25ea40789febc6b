import type { AgainstUsual, DailyRecord, FoundFile, RecordGap, WeatherQuantity } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Runs of missing days told one by one; the others are counted. */
const mostGaps = 4;
/** A mean nearer to the usual than this is as usual, °C. */
const sameC = 0.25;
/** Further from it than this over a month or more is asked about, °C: years seldom differ so much. */
const farC = 3.5;
const daysToTell = 30;
/** A station further off than this is asked about, km. */
const farKm = 30;
/** One no further off than this is at the place, as far as places are rounded, km. */
const nearKm = 1;

/** What stands in rows of parts of a day alone. */
const ofParts = new Set<WeatherQuantity>(['time', 'hour', 'tempC', 'rainDayMm', 'rainSumMm', 'solarW']);

/** Sentences on what one file was found to be. `awayKm`: from the place; null where it does not say. */
export function fileSentences(found: FoundFile, awayKm: number | null, speaker: Speaker): string[] {
  const { say, all, quantity, dayWithYear } = speaker;
  const { file, station, record, columns, otherStations } = found;
  const isByPart = columns.some(({ as }) => ofParts.has(as));
  const values = {
    file,
    format: say(`app.weather.format.${found.format}`),
    step: say(isByPart ? 'app.weather.step.part' : 'app.weather.step.day'),
  };
  const sentences = [
    found.typicalYear
      ? say('app.weather.found.typical', values)
      : say('app.weather.found.file', {
          ...values,
          from: dayWithYear(record.firstDay),
          to: dayWithYear(record.firstDay + record.days - 1),
        }),
    say('app.weather.found.holds', { columns: all(heldBy(found, speaker)) }),
  ];
  if (station?.name) sentences.push(say('app.weather.found.station', { name: station.name }));
  if (awayKm !== null && awayKm >= nearKm) {
    const distance = quantity('distance', awayKm);
    sentences.push(
      say(awayKm > farKm ? 'app.weather.found.far-away' : 'app.weather.found.away', { distance }),
    );
  }
  if (otherStations.length > 0) {
    sentences.push(say('app.weather.found.others', { names: all(otherStations) }));
  }
  return sentences;
}

/** What is measured, each with its unit; dates go without saying. */
function heldBy({ columns }: FoundFile, { say }: Speaker): string[] {
  const measured = columns.filter(({ as }) => /C$|Mm$|^solar/.test(as));
  const told = measured.map(({ as, unit }) => {
    const what = say(as === 'rainMm' ? 'app.weather.field.rainMm' : `app.weather.as.${as}`);
    return unit === null ? what : say('app.weather.in-unit', { what, unit });
  });
  return [...new Set(told)];
}

/** What is missing, and what goes there. */
export function gapSentence(record: DailyRecord, gaps: readonly RecordGap[], speaker: Speaker): string {
  const { say, all, dayWithYear } = speaker;
  if (gaps.length === 0) return say('app.weather.found.gaps.none');
  const days = gaps.reduce((sum, { from, to }) => sum + to - from + 1, 0);
  if (days === record.days) return say('app.weather.found.no-temperature');
  const told = gaps
    .slice(0, mostGaps)
    .map(({ from, to }) =>
      from === to
        ? dayWithYear(from)
        : say('app.weather.span', { from: dayWithYear(from), to: dayWithYear(to) }),
    );
  const rest = gaps.length - told.length;
  const when =
    rest === 0 ? all(told) : say('app.weather.found.and-more', { list: told.join('; '), count: rest });
  return say('app.weather.found.gaps', { days, when });
}

/** How the days measured were for the place; asked about where they hardly can be its own. */
export function againstSentences(
  against: AgainstUsual,
  speaker: Speaker,
): { told: string; asked: string | null } {
  const { say, quantity } = speaker;
  const { warmerC, tempDays, rainDays, rainMm, usualRainMm } = against;
  const told: string[] = [];
  if (warmerC !== null) {
    const by = quantity('temperatureDifference', Math.abs(warmerC));
    const way = Math.abs(warmerC) < sameC ? 'same' : warmerC > 0 ? 'warmer' : 'colder';
    told.push(say(`app.weather.against.${way}`, { by }));
  }
  if (rainDays > 0) {
    const values = { rain: quantity('rain', rainMm), usual: quantity('rain', usualRainMm) };
    told.push(say('app.weather.against.rain', values));
  }
  const isFar = warmerC !== null && tempDays >= daysToTell && Math.abs(warmerC) > farC;
  return { told: told.join(' '), asked: isFar ? say('app.weather.against.far') : null };
}
