import type { SeasonSummary } from '@neckfall/engine';
import { useEffect, useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import type { SeasonAsked } from '../../worker/season.ts';

/**
 * The season of a start that is being moved: every answer is shown as it comes, although a newer day may wait. `key`
 * tells one plan from another; its day apart.
 */
export function useLiveSeason(
  key: string,
  request: SeasonAsked,
): { summary: SeasonSummary | null; isFresh: boolean; failed: string | null } {
  const { startDay } = request.plan;
  const [held, hold] = useState<{ key: string; day: number; summary: SeasonSummary } | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  useEffect(() => {
    let isGone = false;
    ask('season', request, { live: true }).then((reply) => {
      if (reply.state === 'failed') setFailed(reply.message);
      if (reply.state === 'done') {
        hold((older) =>
          isGone && older?.key !== key ? older : { key, day: startDay, summary: reply.answer.summary },
        );
        setFailed(null);
      }
    });
    return () => {
      isGone = true;
    };
  }, [key, startDay]);
  if (held?.key !== key) return { summary: null, isFresh: false, failed };
  return { summary: held.summary, isFresh: held.day === startDay, failed };
}
