import type { Choice } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Whether the onion in the hand suits a place, from the best of its ways of starting. */
export function packetHeadline({ kind, summary }: Choice, place: string, speaker: Speaker): string {
  const { say, day, years } = speaker;
  const { outcome, gamble, neckFall, plan, seasonShares } = summary;
  const [name] = kind.names;
  const values = {
    place,
    name,
    buy: say(`app.which.packet.buy.${kind.start}`, { date: day(plan.startDay) }),
    neckFall: neckFall.p50 === null ? say('never') : day(neckFall.p50),
    years: years(seasonShares.good),
    comes: say(`verdict.${outcome}`),
  };
  if (gamble) return say('app.which.packet.gamble', values);
  if (outcome === 'good' || outcome === 'small') return say(`app.which.packet.${outcome}`, values);
  return say('app.which.packet.poor', values);
}
