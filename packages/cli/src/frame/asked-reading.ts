import {
  type AnswerRefusal,
  type AskRefusal,
  askWeather,
  checkAnswer,
  roundedPoint,
  weatherHost,
} from '@neckfall/data';
import { noCorrections, readWeather, type WeatherReading } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { tell } from '../output/tell.ts';
import { ownAssets } from '../place/assets.ts';
import { resolvePlace } from '../place/resolve-place.ts';
import { refuse } from '../refusal/refusal.ts';
import { today as machineToday } from '../values/clock.ts';
import { parsePoint } from '../values/point.ts';

/** Open-Meteo, an open service; asked only where the grower says `--ask`. Another by the environment. */
const usualHost = 'https://api.open-meteo.com';

type AskedReading = {
  reading: WeatherReading;
  /** Day number; days from here on are forecast. */
  forecastFrom: number;
  /** What goes with the answer. */
  grounds: string[];
};

/** Asks a weather service for a place, after saying on stderr whom and for what; refuses with exit code 3. */
export async function askedReading(text: string, speaker: Speaker): Promise<AskedReading> {
  const { say, dayWithYear } = speaker;
  const { NECKFALL_WEATHER_HOST: value = usualHost } = process.env;
  const host = weatherHost(value);
  if (host === null) throw refuse('ask-host', { values: { value } });
  const asked = /^\s*[-+\d].*[,;]/.test(text) ? { at: text, point: parsePoint(text) } : { town: text };
  const point = roundedPoint(resolvePlace(asked, ownAssets, speaker));
  const name = new URL(host).host;
  const [latitude, longitude] = [point.latitudeDeg.toFixed(1), point.longitudeDeg.toFixed(1)];
  tell(say('ask.asking', { host: name, latitude, longitude }));
  const answer = await askWeather({ host, point, fetch });
  if (!answer.ok) throw refused(name, answer.refusal, speaker);
  const result = readWeather([{ file: name, text: answer.text, encoding: 'utf-8' }], noCorrections, {
    utcOffsetH: null,
  });
  if (!result.ok) throw refused(name, { code: 'not-weather' }, speaker);
  const forecastFrom = machineToday();
  const wrong = checkAnswer(result.reading.files[0], point, forecastFrom);
  if (wrong) throw refused(name, wrong, speaker);
  const grounds = [say('ask.forecast', { date: dayWithYear(forecastFrom) }), say('ask.model')];
  return { reading: result.reading, forecastFrom, grounds };
}

function refused(host: string, refusal: AskRefusal | AnswerRefusal, { dayWithYear }: Speaker) {
  const details = (values: Record<string, string | number>) => ({
    field: '--ask',
    exit: 3 as const,
    values: { host, ...values },
  });
  switch (refusal.code) {
    case 'cancelled':
    case 'unreachable':
      return refuse('ask-unreachable', details({}));
    case 'slow':
      return refuse('ask-slow', details({ seconds: refusal.seconds }));
    case 'status': {
      const { status } = refusal;
      // 429: too many requests (RFC 6585, 4); from 500 on the service is at fault (RFC 9110, 15.6)
      const kind = status === 429 ? 'busy' : status >= 500 ? 'fault' : 'refused';
      return refuse('ask-status', details({ status: String(status), kind }));
    }
    case 'redirected':
      return refuse('ask-redirected', details({}));
    case 'too-big':
      return refuse('ask-too-big', details({ limit: refusal.limitMb }));
    case 'not-text':
    case 'not-weather':
      return refuse('ask-not-weather', details({}));
    case 'other-place': {
      const { latitudeDeg, longitudeDeg } = refusal;
      return refuse(
        'ask-other-place',
        details({ latitude: String(latitudeDeg), longitude: String(longitudeDeg) }),
      );
    }
    case 'other-units': {
      const { column, unit, expected } = refusal;
      return refuse('ask-other-units', details({ column, unit, asked: expected }));
    }
    case 'other-days':
      return refuse(
        'ask-other-days',
        details({ from: dayWithYear(refusal.from), to: dayWithYear(refusal.to) }),
      );
  }
}
