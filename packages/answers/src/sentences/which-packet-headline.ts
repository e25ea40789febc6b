import { type Choice, type DayNumber, type KindNow, startWays } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { comingDay } from './coming-day.ts';
import { isNearlyFull } from './nearly-full.ts';

/** Good bulbs less often than this are no plain yes. */
const yesShare = 0.75;

/** An onion in the hand, by its ways of starting, the best first. */
export type PacketAdvice = {
  choices: readonly Choice[];
  /** The best of them that is in time today. */
  now: KindNow | null;
  /** Whether what it takes is in the hand, so that nothing need be got. */
  isHeld: boolean;
};

/** Whether the onion in the hand suits a place: today if that is in time, else at the best day of the year. */
export function packetHeadline(
  { choices, now, isHeld }: PacketAdvice,
  place: string,
  today: DayNumber,
  speaker: Speaker,
): string {
  const { say, years, quantity } = speaker;
  const { kind } = choices[now?.at ?? 0];
  const summary = now?.summary ?? choices[0].summary;
  const { outcome, gamble, neckFall, seasonShares, plan, bulbDiameterMm } = summary;
  const others = choices.filter((choice) => choice.kind !== kind);
  // how to start is a sentence of its own only where the onion may do well
  const start = outcome === 'good' && !gamble ? 'start-head' : 'start';
  const values = {
    place,
    name: kind.names[0],
    start: say(`app.which.packet.${start}.${kind.start}`, {
      held: isHeld || startWays[kind.start].from === 'seed' ? 'yes' : 'no',
      now: plan.startDay <= today ? 'yes' : 'no',
      date: comingDay(plan.startDay, today, speaker),
    }),
    // another start that ends otherwise is not to be talked away
    however: others.every((other) => other.summary.outcome === outcome && !other.summary.gamble)
      ? 'yes'
      : 'no',
    from: say(`today.start.${kind.start}`),
    neckFall: neckFall.days ? comingDay(neckFall.days.p50, today, speaker) : say('never'),
    size: bulbDiameterMm ? quantity('bulbLength', bulbDiameterMm.p50) : say('none'),
    all: seasonShares[outcome] === 1 ? 'yes' : 'no',
    years: years(seasonShares.good, summary.years),
  };
  if (gamble) return say('app.which.packet.gamble', values);
  if (isNearlyFull(summary)) return say('app.which.packet.nearly', values);
  return say(
    `app.which.packet.${outcome === 'good' && seasonShares.good < yesShare ? 'mostly' : outcome}`,
    values,
  );
}
