import type { DayNumber, KeepLot } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { namesOf } from './choice-sentences.ts';
import { comingDay } from './coming-day.ts';

/** Names told of a kind that is sold under many. */
const mostNames = 3;

/** What a lot is called among others: northern long-day onions from sets. */
export function keepKind({ kind }: Pick<KeepLot, 'kind'>, { say }: Speaker): string {
  return say(`crop-kind.${kind.start}`, { type: say(`type.${kind.type}`) });
}

/** Names under which a lot's kind is sold, those known in the country first. */
export function keepNames({ kind }: Pick<KeepLot, 'kind'>, country: string | null, speaker: Speaker): string {
  return namesOf({ kind }, speaker, mostNames, country);
}

/** Whether it is pulled green, and never comes into store. */
export function isGreenLot({ likes }: Pick<KeepLot, 'likes'>): boolean {
  return likes.includes('green');
}

/** What is said of a lot, with its number from one on. @param at its place in the list */
export function ofLot(at: number, what: string, { say }: Speaker): string {
  return say('keep.lot.numbered', { lot: at + 1, what });
}

/** Seeds, bundles or sets to start a lot with. */
export function neededOf({ need, kind }: Pick<KeepLot, 'need' | 'kind'>): number {
  if (kind.start === 'bought-transplants') return need.bundles ?? 0;
  return (kind.start === 'sets' ? need.sets : need.seeds) ?? 0;
}

/** A lot in one sentence: what to start, when, how much of it, from when and until when it feeds the kitchen. */
export function keepLotSentence(
  lot: KeepLot,
  today: DayNumber,
  country: string | null,
  speaker: Speaker,
): string {
  const { say, quantity } = speaker;
  const { kind, plan, bedM2, need } = lot;
  return say(`keep.lot.${kind.start}`, {
    area: quantity('area', bedM2),
    type: say(`type.${kind.type}`),
    date: comingDay(plan.startDay, today, speaker),
    plants: need.plants,
    needed: neededOf(lot),
    names: keepNames(lot, country, speaker),
    ends: endWords(lot, today, speaker),
  });
}

function endWords(lot: KeepLot, today: DayNumber, speaker: Speaker): string {
  const { say } = speaker;
  const { ready, lastsUntil } = lot;
  const told = (day: DayNumber) => comingDay(day, today, speaker);
  if (!ready.days) return say('keep.lot.never');
  if (!lastsUntil.days) return say('keep.lot.ready', { ready: told(ready.days.p50) });
  return say(isGreenLot(lot) ? 'keep.lot.green' : 'keep.lot.ready-last', {
    ready: told(ready.days.p50),
    last: told(lastsUntil.days.p50),
  });
}
