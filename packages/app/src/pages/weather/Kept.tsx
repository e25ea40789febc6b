import {
  againstUsual,
  type DailyRecord,
  type GardenWeather,
  parseDay,
  recordGaps,
  totalsOf,
  type WeatherSeries,
} from '@neckfall/engine';
import { mostDrawn, WeatherDays, weatherDaysOf } from '@neckfall/pictures';
import { shown } from '@neckfall/words';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { placeName } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { weatherFault } from '../../state/weather.ts';
import { daysMeasured } from './days-measured.ts';
import { againstSentences } from './found-words.ts';
import { monthsTable } from './months-table.ts';

type Props = { kept: GardenWeather; record: DailyRecord; usual: WeatherSeries | null };

/** What is kept of the place, in a sentence or two. */
export function KeptLead({ kept, record, usual }: Props) {
  const speaker = voice.value;
  const { say, dayWithYear } = speaker;
  const fault = weatherFault.value;
  const forecastFrom = forecastOf(kept);
  const measured = daysMeasured(record, forecastFrom);
  const missing = recordGaps(record).reduce((sum, { from, to }) => sum + to - from + 1, 0);
  return (
    <>
      <AnswerHeading
        text={say('app.weather.kept', {
          place: placeName.value,
          from: dayWithYear(record.firstDay),
          to: dayWithYear(record.firstDay + record.days - 1),
          missing: missing === record.days ? 0 : missing,
        })}
      />
      {usual && measured > 0 && (
        <p>{againstSentences(againstUsual(record, usual, measured), speaker).told}</p>
      )}
      {forecastFrom !== null && (
        <p>
          {say('app.weather.forecast-from', { date: dayWithYear(Math.max(forecastFrom, record.firstDay)) })}
        </p>
      )}
      {fault === null ? (
        <p>{say('app.weather.lead.kept')}</p>
      ) : (
        <p class="alarm">{say('app.weather.kept.fault', { fault })}</p>
      )}
    </>
  );
}

/** Its days drawn over what is usual. */
export function KeptFigure({ kept, record, usual }: Props) {
  const speaker = voice.value;
  if (!usual) return null;
  const drawn = weatherDaysOf({
    record,
    usual,
    forecastFrom: forecastOf(kept),
    summary: summaryOf(record),
    speaker,
  });
  return (
    <>
      <FitWidth>{(width) => <WeatherDays width={width} {...drawn} />}</FitWidth>
      <TakePicture
        name="weather"
        what={() => speaker.say('app.take.of.weather')}
        draw={(width) => <WeatherDays width={width} {...drawn} />}
        summary={drawn.summary}
        table={() => monthsTable(record, usual, daysMeasured(record, forecastOf(kept)))}
        weather="measured"
      />
    </>
  );
}

function summaryOf(record: DailyRecord): string {
  const { say, dayWithYear, quantity } = voice.value;
  const { lowestC, highestC, rainTotalMm } = totalsOf(record);
  return [
    say('picture.weather.summary', {
      from: dayWithYear(record.firstDay),
      to: dayWithYear(record.firstDay + record.days - 1),
      least: lowestC === null ? 'none' : quantity('temperature', lowestC),
      most: highestC === null ? 'none' : quantity('temperature', highestC),
      rain: rainTotalMm === null ? 'none' : quantity('rain', rainTotalMm),
    }),
    ...(record.days > mostDrawn ? [say('picture.weather.summary.last')] : []),
  ].join(' ');
}

/** Files and hosts it came from. */
export function Sources({ kept }: { kept: GardenWeather }) {
  const { say, dayWithYear } = voice.value;
  if (kept.sources.length === 0) return null;
  return (
    <section aria-labelledby="weather-sources">
      <h2 id="weather-sources">{say('app.weather.sources')}</h2>
      <ul>
        {kept.sources.map(({ name, from, to }) => (
          <li key={`${name} ${from} ${to}`}>
            {say('app.weather.source', {
              name: shown(name),
              from: dayWithYear(parseDay(from) ?? 0),
              to: dayWithYear(parseDay(to) ?? 0),
            })}
          </li>
        ))}
      </ul>
    </section>
  );
}

export function forecastOf({ forecastFrom }: GardenWeather): number | null {
  return forecastFrom === null ? null : parseDay(forecastFrom);
}
