import { climateYearDays, type DayNumber, type KeepGap, type KeepYear } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { comingDay } from './coming-day.ts';
import { cautionSentence } from './job-sentences.ts';
import { isGreenLot } from './keep-lots.ts';

/** The bed that keeps the kitchen, until when, and when it is bare: the answer in one sentence. */
export function keepHeadline({ lots, bedM2, gaps }: KeepYear, today: DayNumber, speaker: Speaker): string {
  const { say, quantity } = speaker;
  const last = lastOfKeepers({ lots, gaps });
  if (last === null) return say('keep.none');
  return say('keep.answer', {
    area: quantity('area', bedM2),
    plants: lots.reduce((sum, { need }) => sum + need.plants, 0),
    lots: lots.length,
    // two lots of one kind are no two kinds
    kinds: new Set(lots.map(({ kind }) => kind.type)).size === lots.length ? 'each' : 'some',
    last: comingDay(last, today, speaker),
    bare: bareWords(gaps, speaker),
  });
}

/** A gap that is so little longer in a poor year than in most is not told twice, days. */
const aboutSame = 7;

function bareWords(gaps: readonly KeepGap[], speaker: Speaker): string {
  const { say, all } = speaker;
  const ranges = (of: readonly Pick<KeepGap, 'from' | 'to'>[]) =>
    all(of.map((gap) => gapRange(gap, speaker)));
  const most = gaps.flatMap(({ mostly }) => mostly ?? []);
  if (gaps.length === 0) return say('keep.answer.all-year');
  if (most.length === 0) return say('keep.answer.bare', { ranges: ranges(gaps) });
  const isSame = gaps.every(
    ({ from, to, mostly }) => mostly && mostly.from - from <= aboutSame && to - mostly.to <= aboutSame,
  );
  return isSame
    ? say('keep.answer.bare-most', { most: ranges(most) })
    : say('keep.answer.bare-more', { most: ranges(most), ranges: ranges(gaps) });
}

/** What was ready so long before a gap is no new crop when that comes, days (our choice). */
const oldCropDays = 60;

/**
 * When the last of what is stored is over, in whichever year, as the same is planted each year: of all, or where there is
 * a gap the old crop that outlasts the longest, else what ends last before it is over; null where none comes to keep.
 */
function lastOfKeepers({ lots, gaps }: Pick<KeepYear, 'lots' | 'gaps'>): DayNumber | null {
  const [longest] = [...gaps].sort((a, b) => b.to - b.from - (a.to - a.from));
  const stored = lots.flatMap((lot) => {
    const end = lot.lastsUntil.days?.p50;
    return isGreenLot(lot) || end === undefined ? [] : { end, ready: lot.ready.days?.p50 ?? end };
  });
  const inYear = (days: number) => ((days % climateYearDays) + climateYearDays) % climateYearDays;
  const daysBefore = ({ end, ready }: { end: DayNumber; ready: DayNumber }) => {
    if (!longest) return -end;
    const after = inYear(end - longest.to);
    const isOld = end - after - (longest.to - longest.from) - oldCropDays > ready;
    return isOld && after > 0 ? -after : inYear(longest.to - end);
  };
  return stored.sort((a, b) => daysBefore(a) - daysBefore(b))[0]?.end ?? null;
}

/** Days without onions of one's own, with what closes the gap. */
export function keepGapSentence(gap: KeepGap, speaker: Speaker): string {
  const { say, any } = speaker;
  const range = gapRange(gap, speaker);
  const [first, ...others] = gap.closedBy;
  if (first === undefined) return say('keep.gap.open', { range });
  const closers = any([
    say(`keep.closer.${first}`),
    ...others.map((other) => say(`keep.closer.other.${other}`)),
  ]);
  return say('keep.gap', { range, closers });
}

function gapRange({ from, to }: Pick<KeepGap, 'from' | 'to'>, { day, dayRange }: Speaker): string {
  return from === to ? day(from) : dayRange(from, to);
}

/** Wants that nothing answers; null where each is answered. */
export function keepUnmetSentence({ unmetLikes }: KeepYear, { say, any }: Speaker): string | null {
  if (unmetLikes.length === 0) return null;
  return say('keep.unmet', { likes: any(unmetLikes.map((like) => say(`keep.like.${like}`))) });
}

/** Where work with bulbs and their store can do harm. */
export function keepCautions(speaker: Speaker): string[] {
  const cautions = ['treated-seed', 'heaters', 'dust', 'pets', 'lofts'] as const;
  return cautions.map((caution) => cautionSentence(caution, speaker));
}
