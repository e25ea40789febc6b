import {
  type DayNumber,
  type DryingDays,
  type LiftAdvice,
  longestDrying,
  wetSpellMm,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Whether to lift in one sentence, and what it rests on: signs to the hand before numbers, cautions last. */
export type LiftTold = { headline: string; lines: string[] };

/** Fewer plants than this are told as none. */
const worthTelling = 0.02;
/** Less rain in ten days is a dry spell, mm (common practice, no source). */
const drySpellMm = 8;

export function liftTold(
  speaker: Speaker,
  advice: LiftAdvice,
  { liftedOn }: { liftedOn: DayNumber | null },
): LiftTold {
  const { say, day } = speaker;
  const { verdict, best, rainMm } = advice;
  const wet = rainMm >= wetSpellMm ? 'wet' : rainMm < drySpellMm ? 'dry' : 'some';
  const headline = say(`lift.lead.${leadOf(advice)}`, {
    tops: topsWords(advice.topsOverShare, speaker),
    ahead: say('lift.ahead', { wet }),
    date: day(liftedOn ?? best ?? 0),
  });
  const drying = [
    ...advice.drying.map((of) => dryingSentence(of, speaker)),
    say('lift.dry.done'),
    ...(wet === 'dry' ? [] : [say('lift.wet')]),
  ];
  const standing = verdict === 'lifted' ? [] : standingLines(advice, speaker);
  const tooEarly = verdict === 'too-early';
  return {
    headline,
    lines: [
      ...standing,
      ...(tooEarly ? [] : [kitchenSentence(advice, speaker), ...drying]),
      ...(tooEarly ? [] : [say('lift.caution.heater'), say('lift.caution.dust')]),
    ],
  };
}

/** Tops that nobody has counted are to be looked at before anything is pulled. */
function leadOf({ verdict, topsFrom }: LiftAdvice) {
  return topsFrom === 'run' && (verdict === 'lift' || verdict === 'before-rain')
    ? (`look-${verdict}` as const)
    : verdict;
}

function topsWords(share: number, { say }: Speaker): string {
  const tenths = Math.round(10 * share);
  if (share < worthTelling) return say('lift.tops.none');
  if (tenths === 0) return say('lift.tops.few');
  return tenths >= 10 ? say('lift.tops.most') : say('lift.tops.some', { tenths });
}

function standingLines(advice: LiftAdvice, { say, number, day, quantity }: Speaker): string[] {
  const { verdict, best, lossTodayShare, lossBestShare, rainMm, rainFrom, topsFrom } = advice;
  const losses = {
    today: number(100 * lossTodayShare),
    best: number(100 * lossBestShare),
    date: day(best ?? 0),
  };
  const loss =
    verdict === 'wait'
      ? [say('lift.loss.wait', losses)]
      : verdict === 'too-early'
        ? []
        : [say('lift.loss.now', losses)];
  return [
    say('lift.signs'),
    say(`lift.tops-from.${topsFrom}`),
    say(`lift.rain.${rainFrom}`, { rain: quantity('rain', rainMm) }),
    ...loss,
  ];
}

function kitchenSentence({ thickNeckShare, boltedShare }: LiftAdvice, { say, plants }: Speaker): string {
  const shareWords = (share: number) => (Math.round(10 * share) < 1 ? 'no' : plants(share));
  return say('lift.kitchen', { thick: shareWords(thickNeckShare), bolted: shareWords(boltedShare) });
}

/** How long bulbs take to dry in a place, and what they lose meanwhile. */
function dryingSentence({ place, p10, p50, p90, lossShare }: DryingDays, speaker: Speaker): string {
  const { say, number, numberRange } = speaker;
  const loss = number(100 * lossShare);
  const days =
    p50 === null || p10 === null
      ? say('lift.dry.never', { most: longestDrying })
      : p90 === null
        ? say('lift.dry.at-least', { days: p50, most: longestDrying, loss })
        : say('lift.dry.days', { days: p50, range: numberRange(p10, p90), loss });
  const key = place === 'warm-room' && speaker.units === 'us' ? 'warm-room-us' : place;
  return say(`lift.dry.${key}`, { days });
}
