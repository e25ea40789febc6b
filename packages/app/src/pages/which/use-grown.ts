import {
  type CoarseChoice,
  dealKinds,
  type GrownKind,
  type Kind,
  plantKey,
  type SeasonSummary,
} from '@neckfall/engine';
import { type Signal, signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { ask, askLong, cancel, cancelLong } from '../../ask/ask.ts';
import type { WhichGrowAsked } from '../../worker/which-grow.ts';

/** Seasons by plant: see `plantKey`. */
export type Seasons = ReadonlyMap<string, SeasonSummary>;

export type Growing = {
  state: 'at-work' | 'done' | 'stopped' | 'failed';
  /** As a middling year has them, best first; empty at the very first. */
  coarse: readonly CoarseChoice[];
  /** Once all are grown. */
  seasons: Seasons | null;
  failed: string | null;
  progress: Signal<{ done: number; total: number }>;
  stop: () => void;
  goOn: () => void;
};

/** Two threads, each with its half. */
const lines = [
  { ask: askLong, cancel: cancelLong },
  { ask, cancel },
] as const;
const topic = 'whichGrow';

/** The last place grown: coming back to the page costs nothing. */
let last: { key: string; coarse: readonly CoarseChoice[]; seasons: Seasons } | null = null;

type Held = Pick<Growing, 'state' | 'coarse' | 'seasons' | 'failed'> & { key: string };

const nothing = { state: 'at-work', coarse: [], seasons: null, failed: null } as const;
const progress = signal({ done: 0, total: 0 });

/** Grows all kinds at the place of the key, on two threads; a null key waits. */
export function useGrown(key: string | null, job: () => WhichGrowAsked): Growing {
  const [held, hold] = useState<Held | null>(null);
  const [tries, setTries] = useState(0);
  useEffect(() => {
    if (key === null || last?.key === key) return;
    let isGone = false;
    const asked = job();
    const coarse: CoarseChoice[] = [];
    const done = lines.map(() => ({ done: 0, total: 0 }));
    hold({ ...nothing, key });
    progress.value = { done: 0, total: 0 };
    const replies = dealKinds(asked.kinds, lines.length).map((kinds, at) =>
      lines[at].ask(
        'whichGrow',
        { ...asked, kinds },
        {
          topic,
          part: (part) => {
            if (isGone) return;
            done[at] = part;
            progress.value = {
              done: done[0].done + done[1].done,
              total: done[0].total + done[1].total,
            };
            if (!part.coarse) return;
            coarse.push(...part.coarse.map(({ kind, trial }) => ({ kind: kinds[kind], trial })));
            coarse.sort((a, b) => b.trial.worth - a.trial.worth);
            hold({ ...nothing, key, coarse: [...coarse] });
          },
        },
      ),
    );
    void Promise.all(replies).then((shares) => {
      if (isGone) return;
      const grown: GrownKind[] = [];
      for (const share of shares) {
        if (share.state === 'failed') {
          hold({ ...nothing, key, coarse, state: 'failed', failed: share.message });
          return;
        }
        if (share.state === 'overtaken') {
          hold({ ...nothing, key, coarse, state: 'stopped' });
          return;
        }
        grown.push(...share.answer);
      }
      const seasons = seasonsOf(grown);
      last = { key, coarse, seasons };
      hold({ ...nothing, key, coarse, seasons, state: 'done' });
    });
    return () => {
      isGone = true;
      stop();
    };
  }, [key, tries]);
  const isKnown = key !== null && last?.key === key;
  const current = held?.key === key ? held : nothing;
  return {
    ...(isKnown && last
      ? { ...nothing, coarse: last.coarse, seasons: last.seasons, state: 'done' }
      : current),
    progress,
    stop,
    goOn: () => setTries(tries + 1),
  };
}

function stop(): void {
  for (const line of lines) line.cancel(topic);
}

function seasonsOf(grown: readonly GrownKind[]): Seasons {
  const seasons = new Map<string, SeasonSummary>();
  for (const { kind, summary, usual } of grown) {
    seasons.set(plantKey(kind), summary);
    seasons.set(plantKey({ ...kind, traits: null }), usual);
  }
  return seasons;
}

/** These kinds with their seasons, as far as they were grown. */
export function grownOf(kinds: readonly Kind[], seasons: Seasons): GrownKind[] {
  return kinds.flatMap((kind) => {
    const summary = seasons.get(plantKey(kind));
    const usual = seasons.get(plantKey({ ...kind, traits: null }));
    return summary && usual ? [{ kind, summary, usual }] : [];
  });
}
