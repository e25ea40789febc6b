import { useEffect, useRef, useState } from 'preact/hooks';
import { nextTurn } from '../turns/next-turn.ts';
import type { Reply } from './line.ts';

/** What a page knows of an answer: `answer` may be of an older request while `isFresh` is false. */
export type Known<Answer> = { answer: Answer | null; isFresh: boolean; failed: string | null };

/**
 * Asks whenever the key changes, and keeps the last answer on the page until the next has come. A null key asks
 * nothing and shows nothing.
 *
 *     const known = useAnswer(key, () => ask('where', request));
 */
export function useAnswer<Answer>(key: string | null, ask: () => Promise<Reply<Answer>>): Known<Answer> {
  const [held, hold] = useState<{ key: string; answer: Answer | null; failed: string | null } | null>(null);
  const wanted = useRef(key);
  wanted.current = key;
  useEffect(() => {
    if (key === null) return;
    ask().then((reply) => {
      // reading the answer took a task; showing it takes another
      nextTurn(() => {
        if (wanted.current !== key) return;
        if (reply.state === 'done') hold({ key, answer: reply.answer, failed: null });
        if (reply.state === 'failed') hold({ key, answer: null, failed: reply.message });
      });
    });
  }, [key]);
  if (key === null || held === null) return { answer: null, isFresh: false, failed: null };
  return { answer: held.answer, isFresh: held.key === key, failed: held.key === key ? held.failed : null };
}
