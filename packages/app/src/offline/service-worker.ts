/** Keeps the app for use without a network. Built on its own; the list of files is put in by the build. */

declare const version: string;
/** Files without which there is no first answer, and all the others. */
declare const firstFiles: readonly string[];
declare const otherFiles: readonly string[];

type Extendable = Event & { waitUntil: (work: Promise<unknown>) => void };
type Fetching = Extendable & { request: Request; respondWith: (response: Promise<Response>) => void };
type Told = { data: unknown; source: { postMessage: (message: string) => void } | null };
type Worker = {
  addEventListener(type: 'install' | 'activate', listener: (event: Extendable) => void): void;
  addEventListener(type: 'fetch', listener: (event: Fetching) => void): void;
  addEventListener(type: 'message', listener: (event: Extendable & Told) => void): void;
  skipWaiting: () => Promise<void>;
  clients: { claim: () => Promise<void> };
  registration: { scope: string };
};
const worker = globalThis as unknown as Worker;

const prefix = 'neckfall-';
const own = `${prefix}${version}`;

worker.addEventListener('install', (event) => event.waitUntil(keepAll(firstFiles)));

worker.addEventListener('activate', (event) => event.waitUntil(tidy()));

worker.addEventListener('message', (event) => {
  if (event.data === 'take-over') event.waitUntil(worker.skipWaiting());
  if (event.data === 'keep-rest') {
    event.waitUntil(keepAll(otherFiles).then(() => event.source?.postMessage('all-kept')));
  }
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(worker.registration.scope)) return;
  event.respondWith(answer(request));
});

/** Each file as the server has it now: names carry a mark of their content, the first page does not. */
async function keepAll(files: readonly string[]): Promise<void> {
  const cache = await caches.open(own);
  for (const file of files) {
    const url = new URL(file, worker.registration.scope).href;
    if (await cache.match(url)) continue;
    // a file of the version before with the same mark is the same file
    const known = await caches.match(url);
    if (known && file.startsWith('assets/')) {
      await cache.put(url, known);
      continue;
    }
    // named after their content: what the browser has by that name will do
    const response = await fetch(url, { cache: file.startsWith('assets/') ? 'default' : 'no-cache' });
    if (!response.ok) throw new Error(`${file}: ${response.status}`);
    await cache.put(url, response);
  }
}

/** The version before stays for tabs that still run it; older ones go. */
async function tidy(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== own);
  for (const name of names.slice(0, -1)) await caches.delete(name);
  await worker.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(own);
  const wanted = request.mode === 'navigate' ? worker.registration.scope : request.url;
  const kept = (await cache.match(wanted)) ?? (await caches.match(wanted));
  if (kept) return kept;
  const response = await fetch(request);
  if (response.ok && new URL(request.url).pathname.includes('/assets/')) {
    await cache.put(request.url, response.clone());
  }
  return response;
}
