import { climateDayOf, type DailyRecord, fahrenheitToCelsius, type WeatherSeries } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { mmPerStroke } from '../drawing/rain-strokes.ts';
import type { WeatherDaysProps } from './weather-days-props.ts';

type Input = {
  record: DailyRecord;
  /** One year of what is usual there. */
  usual: WeatherSeries;
  /** Day number; null: nothing of it was forecast. */
  forecastFrom: number | null;
  summary: string;
  speaker: Speaker;
};

/** More than a year would be a smear: its last days are drawn. */
export const mostDrawn = 366;
/** Fewer would be blots. */
const leastDrawn = 21;

/** Round numbers of a thermometer, °C or °F: tens, and on a Fahrenheit scale twenties about the frost. */
const degrees = {
  metric: [-30, -20, -10, 0, 10, 20, 30, 40],
  us: [-20, 0, 20, 32, 50, 70, 90, 110],
} as const;

/** All that the picture needs but its width. */
export function weatherDaysOf({
  record,
  usual,
  forecastFrom,
  summary,
  speaker,
}: Input): Omit<WeatherDaysProps, 'width'> {
  const { say, quantity, units } = speaker;
  const days = Math.max(leastDrawn, Math.min(mostDrawn, record.days));
  const skipped = Math.max(0, record.days - days);
  const firstDay = record.firstDay + skipped;
  const measured = (field: 'tempMinC' | 'tempMaxC' | 'rainMm') =>
    Array.from({ length: days }, (_, index) =>
      record.known[field][skipped + index] === 1 ? record[field][skipped + index] : null,
    );
  const usualOf = (values: Float64Array) =>
    Array.from({ length: days }, (_, index) => values[climateDayOf(firstDay + index)]);
  return {
    summary,
    firstDay,
    lowC: measured('tempMinC'),
    highC: measured('tempMaxC'),
    rainMm: measured('rainMm'),
    usualLowC: usualOf(usual.tempMinC),
    usualHighC: usualOf(usual.tempMaxC),
    forecast:
      forecastFrom !== null && forecastFrom < firstDay + days
        ? { from: Math.max(firstDay, forecastFrom), text: say('picture.weather.forecast') }
        : null,
    levels: degrees[units].map((level) => {
      const tempC = units === 'us' ? fahrenheitToCelsius(level) : level;
      return { tempC, text: quantity('temperature', tempC), isFrost: tempC === 0 };
    }),
    months: Array.from({ length: 12 }, (_, month) => speaker.month(month + 1)),
    rainText: say('picture.rain-key', { amount: quantity('rain', mmPerStroke) }),
    measuredText: say('picture.weather.measured'),
    usualText: say('picture.weather.usual'),
  };
}
