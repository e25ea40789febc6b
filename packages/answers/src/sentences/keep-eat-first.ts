import { type DayNumber, type EatReason, eatFirst, type KeepLot, type KeepYear } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { NamedStore } from '../facts/index.ts';
import { comingDay } from './coming-day.ts';
import { isGreenLot, keepKind } from './keep-lots.ts';

/** From this share of plants, or of years, on it is worth a word. */
const tellingShare = 0.1;

/** In which order the lots of a year are eaten, and which bulbs of them before the others. */
export function keepEatFirst({ lots }: KeepYear, today: DayNumber, speaker: Speaker): string[] {
  const { say } = speaker;
  if (lots.length === 0) return [];
  return [
    ...orderOf(lots, today, speaker),
    ...lots.filter((lot) => !isGreenLot(lot)).flatMap((lot) => earlyOf(lot, speaker)),
    say('keep.eat.thick'),
  ];
}

function orderOf(lots: readonly KeepLot[], today: DayNumber, speaker: Speaker): string[] {
  const { say, all } = speaker;
  const dated = lots
    .flatMap((lot, at) =>
      lot.lastsUntil.days && !isGreenLot(lot) ? [{ lot, at, end: lot.lastsUntil.days.p50 }] : [],
    )
    .sort((a, b) => a.end - b.end);
  if (dated.length < 2) return [];
  const told = dated.map(({ lot, at, end }) =>
    say('keep.eat.order.one', {
      lot: at + 1,
      kind: keepKind(lot, speaker),
      last: comingDay(end, today, speaker),
    }),
  );
  return [say('keep.eat.order', { lots: all(told) })];
}

function earlyOf(lot: KeepLot, speaker: Speaker): string[] {
  const { say, number, years } = speaker;
  const kind = keepKind(lot, speaker);
  const { boltedPlantsShare, seasonShares, years: tried } = lot.summary;
  const flowered = boltedPlantsShare?.p50 ?? 0;
  const unripe = seasonShares['not-ripe'];
  return [
    ...(flowered >= tellingShare
      ? [say('keep.eat.flowered', { kind, percent: number(100 * flowered) })]
      : []),
    ...(unripe >= tellingShare ? [say('keep.eat.unripe', { kind, years: years(unripe, tried) })] : []),
  ];
}

/** What is in store, in the order in which it is best eaten, each with why it comes there. */
function inOrder(stores: readonly NamedStore[]): { store: NamedStore; reason: EatReason }[] {
  return eatFirst(stores.map(({ stored }) => stored)).flatMap(({ plantingId, reason }) =>
    stores.filter(({ stored }) => stored.plantingId === plantingId).map((store) => ({ store, reason })),
  );
}

export function storedInOrder(stores: readonly NamedStore[]): NamedStore[] {
  return inOrder(stores).map(({ store }) => store);
}

export function storedEatFirst(stores: readonly NamedStore[], today: DayNumber, speaker: Speaker): string[] {
  const { say, number } = speaker;
  return inOrder(stores).flatMap(({ store: { name, stored }, reason }) => {
    const { lostNextShare, lastsUntil, thickNeckShare } = stored;
    return lastsUntil.days
      ? [
          say('keep.eat.stored', {
            name,
            thick: reason === 'thick-necks' ? number(100 * thickNeckShare) : 'none',
            percent: number(100 * lostNextShare),
            last: comingDay(lastsUntil.days.p50, today, speaker),
          }),
        ]
      : [];
  });
}

/** What a planting has in store today, and when to look through it. */
export function storedSentence({ name, stored }: NamedStore, today: DayNumber, speaker: Speaker): string {
  const { say, number, day, quantity } = speaker;
  const { liftedOn, soundKg, soundBulbs, soundShare, lastsUntil, nextLook } = stored;
  const amount = soundKg
    ? quantity('crop', soundKg.p50)
    : soundBulbs
      ? say('keep.in-store.bulbs', { count: Math.round(soundBulbs.p50) })
      : 'none';
  const is = say('keep.in-store', {
    name,
    date: day(liftedOn),
    amount,
    percent: number(100 * soundShare.p50),
    last: lastsUntil.days ? comingDay(lastsUntil.days.p50, today, speaker) : day(liftedOn),
  });
  return nextLook === null
    ? is
    : `${is} ${say('keep.in-store.look', { date: comingDay(nextLook, today, speaker) })}`;
}
