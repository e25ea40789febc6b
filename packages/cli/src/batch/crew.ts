import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { type Refusal, type RefusalDetails, refuse } from '../refusal/refusal.ts';
import type { Answered } from './answer-rows.ts';
import type { BatchJob } from './line-maker.ts';
import type { Row } from './rows.ts';

/** Whoever answers the rows. */
export type Crew = {
  /** How many portions may usefully be under way at once. */
  hands: number;
  answer(rows: readonly Row[]): Promise<Answered>;
  dismiss(): Promise<void>;
};

/** What a thread says of a portion. */
export type Report = { answered: Answered } | { refusal: Refusal } | { fault: string };

type Thread = {
  worker: Worker;
  waiting: { resolve: (answered: Answered) => void; reject: (error: unknown) => void }[];
};

/** Threads of this same program, as many as there are cores, each started when there is work for it. */
export function threadCrew(job: BatchJob, program: URL, hands = availableParallelism()): Crew {
  const threads: Thread[] = [];

  function start(): Thread {
    const worker = new Worker(program, { workerData: { batch: job }, resourceLimits });
    const thread: Thread = { worker, waiting: [] };
    worker.on('message', (report: Report) => {
      const portion = thread.waiting.shift();
      if ('answered' in report) portion?.resolve(report.answered);
      else if ('refusal' in report) portion?.reject(again(report.refusal));
      else portion?.reject(new Error(report.fault));
    });
    const fail = (error: unknown) => {
      for (const portion of thread.waiting.splice(0)) portion.reject(error);
    };
    worker.on('error', fail);
    worker.on('exit', (code) => fail(new Error(`a thread ended with ${code}`)));
    threads.push(thread);
    return thread;
  }

  return {
    hands,
    answer(rows) {
      return new Promise((resolve, reject) => {
        let thread = threads.find(({ waiting }) => waiting.length === 0);
        thread ??= threads.length < hands ? start() : undefined;
        thread ??= threads.reduce((a, b) => (b.waiting.length < a.waiting.length ? b : a));
        thread.waiting.push({ resolve, reject });
        thread.worker.postMessage(rows);
      });
    },
    async dismiss() {
      await Promise.all(threads.map(({ worker }) => worker.terminate()));
    },
  };
}

/** A thread lives on some 10 MB beside its data: told so, it tidies up in time instead of growing into the room there is. */
const resourceLimits = { maxYoungGenerationSizeMb: 4, maxOldGenerationSizeMb: 64 };

function again({ code, ...details }: Refusal): Error {
  const { field, expected, ...rest } = details;
  const given: RefusalDetails = { ...rest };
  if (field !== null) given.field = field;
  if (expected !== null) given.expected = expected;
  return refuse(code, given);
}
