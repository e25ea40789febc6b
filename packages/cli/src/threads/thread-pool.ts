import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { type Refusal, type RefusalDetails, refuse } from '../refusal/refusal.ts';

/** Threads that answer questions of one kind. */
export type Pool<Asked, Answer> = {
  /** How many questions may usefully be under way at once. */
  hands: number;
  answer(asked: Asked): Promise<Answer>;
  dismiss(): Promise<void>;
};

/** What a thread says of a question. */
export type Report<Answer> = { answered: Answer } | { refusal: Refusal } | { fault: string };

type Thread<Answer> = {
  worker: Worker;
  waiting: { resolve: (answer: Answer) => void; reject: (error: unknown) => void }[];
};

/**
 * Threads of this same program, as many as there are cores, each started when there is work for it.
 *
 * @param youngMb room for what a thread has just made and may soon drop, MB: the more, the seldomer it tidies up
 */
export function threadPool<Asked, Answer>(
  workerData: object,
  program: URL,
  hands = availableParallelism(),
  youngMb = leastYoungMb,
): Pool<Asked, Answer> {
  const threads: Thread<Answer>[] = [];
  const resourceLimits = { maxYoungGenerationSizeMb: youngMb, maxOldGenerationSizeMb: 64 };

  function start(): Thread<Answer> {
    const worker = new Worker(program, { workerData, resourceLimits });
    const thread: Thread<Answer> = { worker, waiting: [] };
    worker.on('message', (report: Report<Answer>) => {
      const asked = thread.waiting.shift();
      if ('answered' in report) asked?.resolve(report.answered);
      else if ('refusal' in report) asked?.reject(again(report.refusal));
      else asked?.reject(new Error(report.fault));
    });
    const fail = (error: unknown) => {
      for (const asked of thread.waiting.splice(0)) asked.reject(error);
    };
    worker.on('error', fail);
    worker.on('exit', (code) => fail(new Error(`a thread ended with ${code}`)));
    threads.push(thread);
    return thread;
  }

  return {
    hands,
    answer(asked) {
      return new Promise((resolve, reject) => {
        let thread = threads.find(({ waiting }) => waiting.length === 0);
        thread ??= threads.length < hands ? start() : undefined;
        thread ??= threads.reduce((a, b) => (b.waiting.length < a.waiting.length ? b : a));
        thread.waiting.push({ resolve, reject });
        thread.worker.postMessage(asked);
      });
    },
    async dismiss() {
      await Promise.all(threads.map(({ worker }) => worker.terminate()));
    },
  };
}

/** A thread lives on some 10 MB beside its data: told so, it tidies up in time instead of growing into the room there is. */
export const leastYoungMb = 4;

function again({ code, ...details }: Refusal): Error {
  const { field, expected, ...rest } = details;
  const given: RefusalDetails = { ...rest };
  if (field !== null) given.field = field;
  if (expected !== null) given.expected = expected;
  return refuse(code, given);
}
