import type { SeasonSummary, SpanParts } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** A date that comes in fewer than half of the years has no span worth telling. */
const leastShare = 0.5;

/**
 * How far this crop's dates and sizes lie apart, and how much of that is the weather of the year; null where tops
 * mostly don't go over.
 */
export function spanPartsSentence(
  { neckFall }: Pick<SeasonSummary, 'neckFall'>,
  { neckFallDays, bulbDiameterMm }: SpanParts,
  { say, quantity }: Speaker,
): string | null {
  if (neckFallDays === null || bulbDiameterMm === null) return null;
  const days = (count: number) => say('how.days', { days: Math.round(count) });
  const words = {
    days: days(neckFallDays.all),
    size: quantity('bulbLength', bulbDiameterMm.all),
    weatherDays: days(neckFallDays.weather),
    weatherSize: quantity('bulbLength', bulbDiameterMm.weather),
  };
  const hasRest = words.days !== words.weatherDays || words.size !== words.weatherSize;
  return say('how.span.parts', {
    ...words,
    some: neckFall.share < 1 ? 'some' : 'all',
    rest: hasRest ? 'some' : 'none',
  });
}

/**
 * Where 8 years in 10 of the crop lie that an answer is mostly about; null where tops mostly don't go over.
 *
 * @param crop how the answer points at it: the crop it names first, or the best of many starts
 */
export function spanSentence(
  { neckFall, bulbDiameterMm }: Pick<SeasonSummary, 'neckFall' | 'bulbDiameterMm'>,
  crop: 'lead' | 'best-start',
  { say, dayRange, quantityRange }: Speaker,
): string | null {
  const { days, share } = neckFall;
  if (days === null || bulbDiameterMm === null || share < leastShare) return null;
  return say(`how.span.${crop}`, {
    some: share < 1 ? 'some' : 'all',
    dates: dayRange(days.p10, days.p90),
    sizes: quantityRange('bulbLength', bulbDiameterMm.p10, bulbDiameterMm.p90),
  });
}
