import { parentPort } from 'node:worker_threads';
import { refusalOf } from '../refusal/refusal.ts';
import type { Report } from './thread-pool.ts';

/** Answers the questions of a pool in the order in which they come. @param tidy done after each */
export function serveThread<Asked, Answer>(answer: (asked: Asked) => Answer, tidy: () => void): void {
  parentPort?.on('message', (asked: Asked) => parentPort?.postMessage(reportOn(asked)));

  function reportOn(asked: Asked): Report<Answer> {
    try {
      return { answered: answer(asked) };
    } catch (error) {
      const refusal = refusalOf(error);
      return refusal ? { refusal } : { fault: String(error) };
    } finally {
      tidy();
    }
  }
}
