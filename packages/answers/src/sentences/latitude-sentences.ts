import {
  classOfType,
  type DayRow,
  type KindSown,
  type SameWinter,
  type SeasonSummary,
  type SunOverYear,
} from '@neckfall/engine';
import type { MessageKey, Speaker } from '@neckfall/words';
import type { PlaceYear } from '../facts/index.ts';

/** What came of sowing at a made-up place. */
export type LatitudeTold = {
  /** Whole degrees; below 0 south of the equator. */
  latitudeDeg: number;
  startDay: number;
  sun: SunOverYear;
  year: PlaceYear;
  /** All kinds sown that day, in the order of `onionTypes`. */
  kinds: readonly KindSown[];
  /** Which of them was chosen, and which does best. */
  chosen: number;
  best: number;
  /** The middling season of the chosen one, day by day. */
  days: readonly DayRow[];
  /** The chosen one sown three weeks earlier. */
  earlier: SeasonSummary;
};

/** "52° north", "the equator". */
export function latitudeName(latitudeDeg: number, { say }: Speaker): string {
  const side = latitudeDeg === 0 ? 'equator' : latitudeDeg < 0 ? 'south' : 'north';
  return say('latitude.at', { degrees: Math.abs(latitudeDeg), side });
}

/** "short-day: 11 h 15 min", as it stands on its line. */
export function latitudeKindWords({ summary, needSunUpH }: KindSown, speaker: Speaker): string {
  return speaker.say('latitude.needs', {
    type: speaker.say(`type.${summary.plan.type}`),
    hours: quarters(needSunUpH, speaker),
  });
}

export function latitudeHeadline(told: LatitudeTold, speaker: Speaker): string {
  const { say, day } = speaker;
  const { summary } = told.kinds[told.best];
  const isGood = summary.outcome === 'good' && !summary.gamble;
  return say(isGood ? 'latitude.headline.good' : 'latitude.headline.none', {
    place: latitudeName(told.latitudeDeg, speaker),
    date: day(told.startDay),
    type: say(`type.${summary.plan.type}`),
    what: say(`verdict.${summary.outcome}`),
    across: across(summary, speaker),
  });
}

/** What the day does here, what that means for the kind chosen, and what to do or to learn from it. */
export function latitudeSentences(told: LatitudeTold, speaker: Speaker): [string, string, string] {
  return [daySentence(told, speaker), kindSentence(told, speaker), nextSentence(told, speaker)];
}

/** Days that differ by less than this are alike, h. */
const alikeH = 0.5;

function daySentence({ latitudeDeg, sun }: LatitudeTold, speaker: Speaker): string {
  const { say, dayLength } = speaker;
  const { longestH, shortestH, upDays, downDays } = sun;
  const values = {
    place: latitudeName(latitudeDeg, speaker),
    longest: dayLength(longestH),
    shortest: dayLength(shortestH),
    up: upDays,
    down: downDays,
  };
  if (longestH - shortestH < alikeH) return say('latitude.day.alike', values);
  if (upDays > 0) return say(downDays > 0 ? 'latitude.day.polar' : 'latitude.day.no-night', values);
  return say('latitude.day', values);
}

function kindSentence({ kinds, chosen, startDay }: LatitudeTold, speaker: Speaker): string {
  const { say, day } = speaker;
  const { summary, needSunUpH, longEnough } = kinds[chosen];
  const span = typeof longEnough === 'string' ? null : longEnough;
  const lead = say(span ? 'latitude.kind.span' : `latitude.kind.${longEnough as 'always' | 'never'}`, {
    type: say(`type.${summary.plan.type}`),
    hours: quarters(needSunUpH, speaker),
    from: span ? day(span.from) : '',
    to: span ? day(span.to) : '',
  });
  return say('latitude.kind', { lead, end: endOf(summary, speaker), date: day(startDay) });
}

/** What becomes of the plants, to be said after "sown on 20 March". */
function endOf({ outcome, onset, leavesMadeAtOnset, neckFall }: SeasonSummary, speaker: Speaker): string {
  const { say, day } = speaker;
  const bulbs = onset.days && {
    date: day(Math.round(onset.days.p50)),
    leaves: Math.round(leavesMadeAtOnset?.p50 ?? 0),
    tops: neckFall.days ? day(Math.round(neckFall.days.p50)) : '',
  };
  if (outcome === 'bolts' || outcome === 'winter-killed') return say(`latitude.end.${outcome}`);
  if (outcome === 'no-bulb' || !bulbs) return say('latitude.end.no-bulb');
  const isDone = neckFall.days !== null && outcome !== 'not-ripe';
  return say(
    isDone ? `latitude.end.${outcome === 'good' ? 'good' : 'small'}` : 'latitude.end.not-ripe',
    bulbs,
  );
}

/** Less than this no gardener sees, mm. */
const seenMm = 2;

function nextSentence({ kinds, chosen, best, earlier }: LatitudeTold, speaker: Speaker): string {
  const { say, day, quantity } = speaker;
  const { summary } = kinds[chosen];
  const top = kinds[best].summary;
  const date = day(earlier.plan.startDay);
  if (summary.outcome === 'no-bulb' && earlier.outcome === 'no-bulb') {
    const isOther = top.outcome === 'good' || top.outcome === 'small';
    return say(isOther ? 'latitude.next.other' : 'latitude.next.nothing', {
      date,
      type: say(`type.${top.plan.type}`),
      what: say(`verdict.${top.outcome}`),
      across: across(top, speaker),
    });
  }
  const now = ringsOf(summary);
  const then = ringsOf(earlier);
  const isOther = earlier.outcome !== summary.outcome && !(isBulb(earlier) && isBulb(summary));
  if (isOther || now === null || then === null)
    return say('latitude.next.then', { date, what: say(`verdict.${earlier.outcome}`) });
  const widerMm = (earlier.bulbDiameterMm?.p50 ?? 0) - (summary.bulbDiameterMm?.p50 ?? 0);
  const size = Math.abs(widerMm) < seenMm ? 'alike' : widerMm > 0 ? 'wider' : 'narrower';
  const rings = then - now;
  if (rings === 0 && size === 'alike')
    return say(comesUpWith(summary, earlier) ? 'latitude.next.cold' : 'latitude.next.same', { date });
  return say('latitude.next.rings', {
    date,
    change: rings === 0 ? 'none' : rings > 0 ? 'more' : 'fewer',
    rings: Math.abs(rings),
    size,
    by: quantity('bulbLength', Math.abs(widerMm)),
  });
}

/** Sown so much earlier, seed that comes up within so many days of the later sown has waited for warmth. */
const waitedDays = 7;

function comesUpWith(later: SeasonSummary, earlier: SeasonSummary): boolean {
  const [late, early] = [later.emergence.days, earlier.emergence.days];
  return late !== null && early !== null && late.p50 - early.p50 <= waitedDays;
}

const isBulb = ({ outcome }: SeasonSummary) => outcome === 'good' || outcome === 'small';

/** A ring for each leaf that stands when bulbs start; null where none do. */
function ringsOf({ leavesGreenAtOnset }: SeasonSummary): number | null {
  return leavesGreenAtOnset && Math.round(leavesGreenAtOnset.p50);
}

/** Why one hardiness zone holds opposite kinds, from two places that share their coldest night. */
export function sameWinterSentences({ coldestNightC, opposite }: SameWinter, speaker: Speaker): string[] {
  const { say, quantity, dayLength } = speaker;
  const names = opposite.map(({ latitudeDeg }) => latitudeName(latitudeDeg, speaker));
  return [
    say('latitude.zone.same', {
      one: names[0],
      other: names[1],
      night: quantity('temperature', coldestNightC),
    }),
    ...opposite.map(({ longestDayH, best, stranger }, i) =>
      say('latitude.zone.place', {
        place: names[i],
        longest: dayLength(longestDayH),
        type: say(`type.${best.summary.plan.type}`),
        date: speaker.day(best.summary.plan.startDay),
        across: across(best.summary, speaker),
        stranger: say(`type.${stranger.plan.type}`),
        what: say(`verdict.${stranger.outcome}`),
      }),
    ),
    say('latitude.zone.words', {
      one: say(`class.${classOfType[opposite[0].best.summary.plan.type]}`),
      other: say(`class.${classOfType[opposite[1].best.summary.plan.type]}`),
    }),
  ];
}

/** "4 °C warmer than usual", "as warm as usual". */
export function warmthWords(warmerC: number, { say, quantity }: Speaker): string {
  const key: MessageKey =
    warmerC === 0
      ? 'latitude.warmth.usual'
      : warmerC > 0
        ? 'latitude.warmth.warmer'
        : 'latitude.warmth.colder';
  return say(key, { by: quantity('temperatureDifference', Math.abs(warmerC)) });
}

function across({ bulbDiameterMm }: SeasonSummary, { quantity }: Speaker): string {
  return bulbDiameterMm ? quantity('bulbLength', bulbDiameterMm.p50) : '';
}

/** To a quarter of an hour: no packet and no grower knows it closer. */
function quarters(hours: number, { dayLength }: Speaker): string {
  return dayLength(Math.round(hours * 4) / 4);
}
