/**
 * When the browser knows its languages, or cannot be asked on another thread: it looks through them when the first
 * format of numbers, dates or lists is made, once for the whole process, which takes a slow phone some 50 ms.
 */
export const languagesKnown: Promise<unknown> = new Promise((resolve) => {
  const worker = new Worker(new URL('./languages-worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = resolve;
  worker.onerror = resolve;
});
