import type { FromWorker, Handlers, PartOf, ReplyOf, RequestOf, ToWorker } from '../worker/protocol.ts';

/** How an asked answer ended: with it, overtaken by a newer request, or with a fault. */
export type Reply<Answer> =
  | { state: 'done'; answer: Answer }
  | { state: 'overtaken' }
  | { state: 'failed'; message: string };

type Waiting = {
  resolve: (reply: Reply<unknown>) => void;
  part: (part: unknown) => void;
  isLive: boolean;
  isUnwanted: boolean;
};

export type AskOptions<Part> = {
  /** Requests of one topic overtake each other; the kind of the request unless named. */
  topic?: string;
  part?: (part: Part) => void;
  /** Answers are wanted although a newer request waits: pictures that follow a dragged date. */
  live?: boolean;
};

type Queued = { kind: string; request: unknown; waiting: Waiting };

/**
 * A line to a worker. In each topic one request is at work and the newest waits; those between are overtaken, so
 * that a dragged date never piles up work.
 */
export function openLine<Work extends Handlers>(open: () => Worker) {
  let worker: Worker | null = null;
  let lastId = 0;
  const atWork = new Map<number, { topic: string; waiting: Waiting }>();
  const busy = new Map<string, number>();
  const next = new Map<string, Queued>();

  function connect(): Worker {
    if (worker) return worker;
    const opened = open();
    opened.onmessage = ({ data }: MessageEvent<FromWorker>) => hear(data);
    opened.onerror = (event) => {
      event.preventDefault();
      fail(event.message || 'the worker did not start');
    };
    worker = opened;
    return opened;
  }

  /** The worker is gone: all that waits is told, and the next request opens another. */
  function fail(message: string): void {
    worker?.terminate();
    worker = null;
    const all = [...[...atWork.values()].map(({ waiting }) => waiting), ...queuedWaiting()];
    atWork.clear();
    busy.clear();
    next.clear();
    for (const waiting of all) waiting.resolve({ state: 'failed', message });
  }

  function queuedWaiting(): Waiting[] {
    return [...next.values()].map(({ waiting }) => waiting);
  }

  function hear(message: FromWorker): void {
    const found = atWork.get(message.id);
    if (!found) return;
    const { topic, waiting } = found;
    if ('part' in message) {
      if (!isOvertaken(topic, waiting)) waiting.part(message.part);
      return;
    }
    atWork.delete(message.id);
    busy.delete(topic);
    if ('failed' in message) waiting.resolve({ state: 'failed', message: message.failed });
    else if ('left' in message || isOvertaken(topic, waiting)) waiting.resolve({ state: 'overtaken' });
    else waiting.resolve({ state: 'done', answer: message.done });
    const queued = next.get(topic);
    if (queued) {
      next.delete(topic);
      send(topic, queued);
    }
  }

  function isOvertaken(topic: string, { isLive, isUnwanted }: Waiting): boolean {
    return isUnwanted || (!isLive && next.has(topic));
  }

  function send(topic: string, { kind, request, waiting }: Queued): void {
    const id = ++lastId;
    atWork.set(id, { topic, waiting });
    busy.set(topic, id);
    connect().postMessage({ id, kind, request } satisfies ToWorker);
  }

  function ask<Kind extends keyof Work & string>(
    kind: Kind,
    request: RequestOf<Work[Kind]>,
    { topic = kind, part = () => {}, live = false }: AskOptions<PartOf<Work[Kind]>> = {},
  ): Promise<Reply<ReplyOf<Work[Kind]>>> {
    return new Promise((resolve) => {
      const queued: Queued = {
        kind,
        request,
        waiting: {
          resolve: resolve as Waiting['resolve'],
          part: part as Waiting['part'],
          isLive: live,
          isUnwanted: false,
        },
      };
      if (busy.has(topic)) {
        next.get(topic)?.waiting.resolve({ state: 'overtaken' });
        next.set(topic, queued);
        if (!live) callOff(topic);
      } else send(topic, queued);
    });
  }

  /** Tells the worker that the answer at work is no longer wanted; it leaves off where it can. */
  function callOff(topic: string): void {
    const id = busy.get(topic);
    if (id === undefined) return;
    worker?.postMessage({ cancel: id } satisfies ToWorker);
  }

  /** Drops all requests of a topic: they end overtaken. */
  function cancel(topic: string): void {
    next.get(topic)?.waiting.resolve({ state: 'overtaken' });
    next.delete(topic);
    const running = atWork.get(busy.get(topic) ?? -1);
    if (!running) return;
    running.waiting.isUnwanted = true;
    callOff(topic);
  }

  return { ask, cancel, close: () => fail('closed') };
}
