import type { Change, ChangeCode, GrownSo, WhatIf, WhyAnswer } from '@neckfall/engine';
import type { MessageValues, Speaker } from '@neckfall/words';

/** By what two seasons are held against each other. */
type Measure = 'sound' | 'flower' | 'bulbs';

/** Shorter times than this are told in days. */
const weeksFromDays = 14;
/** A difference in plants that flower from which on it is what is told. */
const tellingShare = 0.1;

/** Changes of what comes after the bed. */
const ofTheStore: readonly ChangeCode[] = [
  'cool-dry-store',
  'frost-free-store',
  'better-keeper',
  'lifted-ripe',
];

/** What is done otherwise, to stand inside a sentence: "started 3 weeks earlier, about 12 March". */
export function changePhrase(change: Change, speaker: Speaker): string {
  return speaker.say(`why.change.${wayOf(change)}`, valuesOf(change, speaker));
}

/** A season as grown held against the same without a cause. */
export function whatIfSentence({ change, grown }: WhatIf, asGrown: GrownSo, speaker: Speaker): string {
  const { say, years } = speaker;
  const measure = measureOf(change, grown, asGrown);
  const words = {
    change: changePhrase(change, speaker),
    was: grownWords(asGrown, measure, speaker),
    would: grownWords(grown, measure, speaker),
  };
  if (measure === 'sound') return say('why.what-if.kept', words);
  return say('why.what-if', { ...words, years: years(grown.goodShare, null) });
}

/** What to do otherwise next year, and what comes of it. */
export function nextYearSentence(
  { change, grown }: NonNullable<WhyAnswer['nextYear']>,
  speaker: Speaker,
): string {
  const { say, years } = speaker;
  const measure = measureOf(change, grown, grown);
  const words = {
    change: say(`why.next.${wayOf(change)}`, valuesOf(change, speaker)),
    would: grownWords(grown, measure, speaker),
  };
  if (measure === 'sound') return say('why.next-year.kept', words);
  return say('why.next-year', { ...words, years: years(grown.goodShare, null) });
}

function measureOf({ code }: Change, grown: GrownSo, asGrown: GrownSo): Measure {
  if (grown.soundShare !== null && asGrown.soundShare !== null && ofTheStore.includes(code)) return 'sound';
  return Math.abs(grown.boltedShare - asGrown.boltedShare) >= tellingShare ? 'flower' : 'bulbs';
}

function grownWords(
  { outcome, bulbDiameterMm, boltedShare, soundShare }: GrownSo,
  measure: Measure,
  { say, quantity }: Speaker,
): string {
  if (measure === 'sound')
    return say('why.grown.sound', { bulbs: say('why.of.bulbs', { tenths: tenths(soundShare ?? 0) }) });
  if (measure === 'flower') return say('why.grown.flower', { tenths: tenths(boltedShare) });
  if (outcome === 'winter-killed') return say('why.grown.winter');
  if (bulbDiameterMm === null || outcome === 'no-bulb') return say('why.grown.no-bulb');
  const size = quantity('bulbLength', bulbDiameterMm.p50);
  return say(outcome === 'not-ripe' ? 'why.grown.thick' : 'why.grown.size', { size });
}

const tenths = (share: number) => Math.round(share * 10);

/** The end of its message's key: each way of starting is said in its own words. */
function wayOf(change: Change) {
  return change.code === 'other-start' ? (`other-start.${change.start}` as const) : change.code;
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
    case 'cool-dry-store':
      return {
        temp: quantity('temperature', change.tempC),
        humidity: Math.round(change.humidityPct),
      };
    case 'better-keeper':
      return { months: Math.round(change.months) };
    default:
      return {};
  }
}

function timeWords(days: number, say: Speaker['say']): string {
  if (days < weeksFromDays) return say('why.time.days', { count: Math.round(days) });
  return say('why.time.weeks', { count: Math.round(days / 7) });
}
