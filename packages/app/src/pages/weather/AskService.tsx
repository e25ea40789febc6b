import { type AnswerRefusal, type AskRefusal, askWeather, roundedPoint } from '@neckfall/data';
import { useEffect, useRef, useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { weatherHost } from '../../ask/weather-host.ts';
import { place } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { machineToday } from '../../state/today.ts';
import type { WeatherFound } from '../../worker/weather-read.ts';

type Refusal = AskRefusal | AnswerRefusal;
type Props = { onAnswer: (found: WeatherFound) => void };

/** A weather service, asked when the button is pressed and at no other time; most copies ask nobody. */
export function AskService({ onAnswer }: Props) {
  const { say } = voice.value;
  return (
    <section aria-labelledby="ask-service">
      <h2 id="ask-service">{say('app.weather.ask')}</h2>
      {weatherHost === null ? (
        <p class="hint">{say('app.weather.ask.off')}</p>
      ) : (
        <AskHost host={weatherHost} onAnswer={onAnswer} />
      )}
    </section>
  );
}

function AskHost({ host, onAnswer }: Props & { host: string }) {
  const { say } = voice.value;
  const waiting = useRef<AbortController | null>(null);
  const [isWaiting, wait] = useState(false);
  const [refused, refuse] = useState<Refusal | null>(null);
  const name = new URL(host).host;
  const { latitudeDeg, longitudeDeg } = roundedPoint(place.value!);
  // a page that is left waits for nothing
  useEffect(() => () => waiting.current?.abort(), []);

  async function press(): Promise<void> {
    const leave = new AbortController();
    waiting.current = leave;
    refuse(null);
    wait(true);
    const refusal = await answerTo(leave.signal);
    if (waiting.current !== leave) return;
    waiting.current = null;
    wait(false);
    refuse(refusal?.code === 'cancelled' ? null : refusal);
  }

  async function answerTo(signal: AbortSignal): Promise<Refusal | null> {
    const point = roundedPoint(place.value!);
    const answer = await askWeather({ host, point, fetch: (url, init) => fetch(url, init), signal });
    if (!answer.ok) return answer.refusal;
    const read = await ask('weatherAnswer', { text: answer.text, host: name, point, today: machineToday() });
    if (signal.aborted || read.state !== 'done') return { code: 'cancelled' };
    if (!read.answer.ok) return read.answer.refusal;
    onAnswer(read.answer.found);
    return null;
  }

  return (
    <>
      <p id="ask-what">
        {say('app.weather.ask.what', {
          host: name,
          latitude: latitudeDeg.toFixed(1),
          longitude: longitudeDeg.toFixed(1),
        })}
      </p>
      <p class="hint">{say('app.weather.ask.model')}</p>
      <p>
        {isWaiting ? (
          <button type="button" onClick={() => waiting.current?.abort()}>
            {say('app.weather.ask.stop')}
          </button>
        ) : (
          <button type="button" aria-describedby="ask-what" onClick={() => void press()}>
            {say('app.weather.ask.do')}
          </button>
        )}
      </p>
      <p role="status">{isWaiting && say('app.weather.ask.waiting', { host: name })}</p>
      {refused && (
        <p role="alert" class="alarm">
          {refusalSentence(refused, name)}
        </p>
      )}
    </>
  );
}

function refusalSentence(refusal: Refusal, host: string): string {
  const { say, dayWithYear } = voice.value;
  switch (refusal.code) {
    case 'cancelled':
    case 'unreachable':
      return say('app.weather.asked.unreachable', { host });
    case 'slow':
      return say('app.weather.asked.slow', { host, seconds: refusal.seconds });
    case 'status':
      return say('app.weather.asked.status', {
        host,
        status: String(refusal.status),
        kind: kindOf(refusal.status),
      });
    case 'redirected':
      return say('app.weather.asked.redirected', { host });
    case 'too-big':
      return say('app.weather.asked.too-big', { host, limit: refusal.limitMb });
    case 'not-text':
    case 'not-weather':
      return say('app.weather.asked.not-weather', { host });
    case 'other-place': {
      const { latitudeDeg, longitudeDeg } = refusal;
      return say('app.weather.asked.other-place', {
        host,
        latitude: String(latitudeDeg),
        longitude: String(longitudeDeg),
      });
    }
    case 'other-units': {
      const { column, unit, expected } = refusal;
      return say('app.weather.asked.other-units', { host, column, unit, expected });
    }
    case 'other-days':
      return say('app.weather.asked.other-days', {
        host,
        from: dayWithYear(refusal.from),
        to: dayWithYear(refusal.to),
      });
  }
}

/** 429 is too many requests (RFC 6585, 4); from 500 on the service itself is at fault (RFC 9110, 15.6). */
function kindOf(status: number): string {
  if (status === 429) return 'busy';
  return status >= 500 ? 'fault' : 'refused';
}
