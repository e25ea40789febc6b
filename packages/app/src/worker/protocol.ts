/** Messages between a page and a worker. */
export type ToWorker = { id: number; kind: string; request: unknown } | { cancel: number };

export type FromWorker =
  | { id: number; done: unknown }
  /** What is known so far, before the answer is whole. */
  | { id: number; part: unknown }
  | { id: number; failed: string }
  /** The work was called off. */
  | { id: number; left: true };

/** What a piece of work may tell and ask while it runs. */
export type Work<Part = never> = {
  part: (part: Part) => void;
  /** Lets waiting messages in; throws {@link cancelled} where the reader no longer wants the answer. */
  pause: () => Promise<void>;
  isCancelled: () => boolean;
};

/** Thrown inside a worker to leave work that was called off. */
export const cancelled = Symbol('cancelled');

/** A piece of work of a worker; `any`thing that can be copied between threads. */
export type Handler<Request, Reply, Part = never> = (
  request: Request,
  work: Work<Part>,
) => Reply | Promise<Reply>;

// biome-ignore lint/suspicious/noExplicitAny: the widest handler, so that each keeps its own types
export type Handlers = Record<string, Handler<any, any, any>>;

export type RequestOf<Work> = Work extends Handler<infer Request, infer _, infer __> ? Request : never;
export type ReplyOf<Work> = Work extends Handler<infer _, infer Reply, infer __> ? Awaited<Reply> : never;
export type PartOf<Found> = Found extends (request: infer _, work: Work<infer Part>) => unknown
  ? Part
  : never;
