import type { Speaker } from '@neckfall/words';

/** Tells how far a map is. */
export type Watch = {
  /** @param done tiles that an earlier run has left */
  begin(tiles: number, done: number): void;
  /** A tile more, with so many points. */
  add(points: number): void;
  end(): void;
};

/** On a screen the line is written over; in a log of a job it comes again once a minute. */
const everyMs = { screen: 250, log: 60_000 } as const;

export function watchOn({ say, number }: Pick<Speaker, 'say' | 'number'>, stream = process.stderr): Watch {
  const isScreen = stream.isTTY === true;
  let from = 0;
  let shown = 0;
  let [tiles, before, done, points] = [0, 0, 0, 0];
  return {
    begin(all, left) {
      from = performance.now();
      shown = from;
      tiles = all;
      before = left;
      done = left;
      if (left > 0 && left < all) stream.write(`${say('mapping.goes-on', { done: left, tiles: all })}\n`);
    },
    add(more) {
      done++;
      points += more;
      const now = performance.now();
      if (now - shown < (isScreen ? everyMs.screen : everyMs.log)) return;
      shown = now;
      const seconds = (now - from) / 1000;
      const left = ((tiles - done) * seconds) / (done - before);
      const line = say('mapping.progress', {
        share: number((100 * done) / tiles),
        rate: number(points / seconds),
        minutes: left < 90 ? 0 : Math.round(left / 60),
        seconds: Math.ceil(left),
      });
      stream.write(isScreen ? `\r${line}\u001b[K` : `${line}\n`);
    },
    end: () => void (isScreen && stream.write('\r\u001b[K')),
  };
}
