import { classOfType, type StartWindow, type WhenAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Less than this is told as no year in ten. */
const leastToldShare = 0.05;

/**
 * From when to when an onion started one way ends in good bulbs.
 *
 * @param cultivar its name; null where none is known
 * @param place named first; null where the reader knows it already
 */
export function whenHeadline(
  { starts, windows }: WhenAnswer,
  cultivar: string | null,
  place: string | null,
  speaker: Speaker,
): string {
  const { say, any, dayOfYear, numberRange } = speaker;
  const { plan } = starts[0].summary;
  // without a place the onion begins the sentence
  const form = place === null ? '-head' : '';
  // spring and autumn may have types of their own: the year is that of all
  const isMixed = starts.some(({ summary }) => summary.plan.type !== plan.type);
  const type =
    cultivar ?? (isMixed ? say(`class${form}.${classOfType[plan.type]}`) : say(`type${form}.${plan.type}`));
  const values = {
    named: place === null ? 'no' : 'yes',
    place: place ?? '',
    crop: say(`crop-kind.${plan.start}`, { type }),
  };
  if (windows.length === 0) {
    // a table with good years in it must not stand under a sentence that knows of none
    const isHopeless = starts.every(({ summary }) => summary.seasonShares.good < leastToldShare);
    return say(isHopeless ? 'when.none' : 'when.few', values);
  }
  if (windows.length === 1 && windows[0].from === 1 && windows[0].to === 358) {
    const good = starts.map(({ summary }) => 10 * summary.seasonShares.good);
    return say('when.any-week', {
      ...values,
      good: numberRange(Math.min(...good), Math.max(...good)),
      best: dayOfYear(windows[0].best),
    });
  }
  const words = windows.map((window) => windowWords(window, speaker));
  return say('when.windows', { ...values, windows: any(words) });
}

function windowWords({ from, to, best }: StartWindow, { say, dayOfYear }: Speaker): string {
  if (from === to) return say('when.window-one', { from: dayOfYear(from) });
  return say('when.window', { from: dayOfYear(from), to: dayOfYear(to), best: dayOfYear(best) });
}
