import type { Change, GrownSo, WhatIf, WhyAnswer } from '@neckfall/engine';
import type { MessageValues, Speaker } from '@neckfall/words';
import { grownWords, hopedWords, measureOf } from './why-grown.ts';

/** Shorter times than this are told in days. */
const weeksFromDays = 14;

/** What is done otherwise, to stand inside a sentence: "started 3 weeks earlier, about 12 March". */
export function changePhrase(change: Change, speaker: Speaker): string {
  return speaker.say(`why.change.${wayOf(change)}`, valuesOf(change, speaker));
}

/**
 * The season with a cause at work held against the same without it.
 *
 * @param asGrown the season as told: a cause that is not at work there may only have been
 */
export function whatIfSentence(
  { change, atWork, grown }: WhatIf,
  asGrown: GrownSo,
  speaker: Speaker,
): string {
  const measure = measureOf(change, atWork, grown);
  const told = measure === 'sound' ? 'kept' : 'grown';
  return speaker.say('why.what-if', {
    way: isAlike(atWork, asGrown) ? told : 'unsaid',
    was: grownWords(atWork, measure, speaker),
    change: changePhrase(change, speaker),
    would: hopedWords(grown, measure, speaker),
  });
}

/** What to do otherwise next year, and what comes of it. */
export function nextYearSentence({ change, grown }: WhyAnswer['nextYear'], speaker: Speaker): string {
  const { say } = speaker;
  const would = hopedWords(grown, measureOf(change, grown, grown), speaker);
  // the weather is nobody's doing
  if (change === null || change.code === 'usual-weather' || change.code === 'other-weather')
    return say('why.next-year.same', { would });
  return say('why.next-year', {
    change: say(`why.next.${wayOf(change)}`, valuesOf(change, speaker)),
    would,
  });
}

/** Whether two seasons came to the same, whatever was passed from one to the other. */
function isAlike(a: GrownSo, b: GrownSo): boolean {
  const came = ({ outcome, goodShare, bulbDiameterMm, boltedShare, soundShare }: GrownSo) =>
    [outcome, goodShare, bulbDiameterMm?.p50, boltedShare, soundShare].join();
  return came(a) === came(b);
}

/** The end of its message's key: each way of starting is told in words of its own. */
function wayOf<Of extends Change>(change: Of) {
  type Code = Exclude<Of['code'], 'other-start'>;
  return change.code === 'other-start' ? (`other-start.${change.start}` as const) : (change.code as Code);
}

function valuesOf(change: Change, { say, day, quantity }: Speaker): MessageValues {
  switch (change.code) {
    case 'other-kind':
      return { type: say(`type.${change.type}`) };
    case 'other-start':
      return { type: say(`type.${change.type}`), date: day(change.day) };
    case 'earlier':
    case 'later':
      return { time: timeWords(change.days, say), date: day(change.day) };
    case 'smaller-sets':
      return { size: quantity('bulbLength', change.mm) };
    case 'wider':
      return { density: quantity('density', change.perM2) };
    case 'covered':
      return { cover: change.cover };
    case 'cool-store':
      return { temp: quantity('temperature', change.tempC) };
    case 'dry-store':
      return { humidity: Math.round(change.humidityPct) };
    case 'better-keeper':
      return { months: Math.round(change.months) };
    case 'other-weather':
      return {
        by: quantity('temperatureDifference', Math.abs(change.byC)),
        way: change.byC < 0 ? 'colder' : 'warmer',
      };
    default:
      return {};
  }
}

function timeWords(days: number, say: Speaker['say']): string {
  if (days < weeksFromDays) return say('why.time.days', { count: Math.round(days) });
  return say('why.time.weeks', { count: Math.round(days / 7) });
}
