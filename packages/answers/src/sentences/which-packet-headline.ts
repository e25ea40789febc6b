import type { Choice } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Good bulbs less often than this are no plain yes. */
const yesShare = 0.75;

/**
 * Whether the onion in the hand suits a place, from the first of its ways of starting: the best, or the best that what is
 * in the hand leaves open.
 *
 * @param date the day of that start, as it is to be said
 */
export function packetHeadline(
  [{ kind, summary }, ...others]: readonly Choice[],
  { place, date }: { place: string; date: string },
  { say, day, years }: Speaker,
): string {
  const { outcome, gamble, neckFall, seasonShares } = summary;
  const [name] = kind.names;
  // how to start is a sentence of its own only where the onion may do well
  const buy = outcome === 'good' && !gamble ? 'buy-head' : 'buy';
  const values = {
    place,
    name,
    buy: say(`app.which.packet.${buy}.${kind.start}`, { date }),
    // another start that ends otherwise is not to be talked away
    however: others.every((other) => other.summary.outcome === outcome && !other.summary.gamble)
      ? 'yes'
      : 'no',
    start: say(`today.start.${kind.start}`),
    neckFall: neckFall.days ? day(neckFall.days.p50) : say('never'),
    years: years(seasonShares.good, summary.years),
  };
  if (gamble) return say('app.which.packet.gamble', values);
  return say(
    `app.which.packet.${outcome === 'good' && seasonShares.good < yesShare ? 'mostly' : outcome}`,
    values,
  );
}
