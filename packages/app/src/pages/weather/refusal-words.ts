import type { Speaker } from '@neckfall/words';
import type { FileRefusal } from '../../worker/weather-read.ts';

/** Why a file was not taken, and what to do, in one line. */
export function refusalSentence(refusal: FileRefusal, { say }: Speaker): string {
  const { file, code } = refusal;
  if (code === 'too-big') return say('app.weather.refused.too-big', { file, limit: refusal.limitMb });
  if (!('received' in refusal)) return say(`app.weather.refused.${refusal.code}`, { file });
  const { line, received, field } = refusal;
  return say(`app.weather.refused.${refusal.code}`, { file, line: line ?? 1, received, field });
}
