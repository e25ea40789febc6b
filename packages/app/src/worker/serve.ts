import { cancelled, type FromWorker, type Handlers, type ToWorker, type Work } from './protocol.ts';

/** The bit of a worker's world that is used; the page's types and a worker's do not go together. */
type WorkerSelf = {
  postMessage: (message: FromWorker) => void;
  addEventListener: (type: 'message', listener: (event: { data: ToWorker }) => void) => void;
};

type Asking = Exclude<ToWorker, { cancel: number }>;

/** Answers a page's requests, each with the handler of its kind. */
export function serve(handlerOf: (kind: string) => Handlers[string] | Promise<Handlers[string]>): void {
  const self = globalThis as unknown as WorkerSelf;
  const calledOff = new Set<number>();
  const running = new Set<number>();

  self.addEventListener('message', ({ data }) => {
    if ('cancel' in data) {
      if (running.has(data.cancel)) calledOff.add(data.cancel);
      return;
    }
    void answer(data);
  });

  async function answer({ id, kind, request }: Asking): Promise<void> {
    running.add(id);
    const work: Work<unknown> = {
      part: (part) => self.postMessage({ id, part }),
      isCancelled: () => calledOff.has(id),
      async pause() {
        await nextMessages();
        if (calledOff.has(id)) throw cancelled;
      },
    };
    try {
      const handler = await handlerOf(kind);
      self.postMessage({ id, done: await handler(request, work) });
    } catch (error) {
      self.postMessage(
        error === cancelled ? { id, left: true } : { id, failed: (error as Error).message ?? String(error) },
      );
    } finally {
      running.delete(id);
      calledOff.delete(id);
    }
  }
}

/** A turn of the message queue, without the 4 ms that timers wait. */
function nextMessages(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}
