import { type AnswerRefusal, checkAnswer } from '@neckfall/data';
import { noCorrections, readWeather } from '@neckfall/engine';
import { foundAt, type WeatherFound, type WeatherPoint } from './weather-read.ts';

export type WeatherAnswerAsked = {
  text: string;
  /** Named as where it came from. */
  host: string;
  /** The point that was sent, a day number, and the place it was sent for. */
  point: WeatherPoint;
  today: number;
};

export type WeatherAnswerReply = { ok: true; found: WeatherFound } | { ok: false; refusal: AnswerRefusal };

/** Reads what a weather service answered, and holds it against what was asked. */
export function weatherAnswer({ text, host, point, today }: WeatherAnswerAsked): WeatherAnswerReply {
  const result = readWeather([{ file: host, text, encoding: 'utf-8' }], noCorrections, { utcOffsetH: null });
  if (!result.ok) return { ok: false, refusal: { code: 'not-weather' } };
  const refusal = checkAnswer(result.reading.files[0], point, today);
  return refusal ? { ok: false, refusal } : { ok: true, found: foundAt(result.reading, point) };
}
