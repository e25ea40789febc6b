import { signal } from '@preact/signals';

/** A new version has been fetched and waits for the reader's word. */
export const updateReady = signal(false);
/** Another tab took the new version while this one was open. */
export const elsewhere = signal(false);

/** All files are on the device: no network is needed any more. */
export const allKept = signal(false);

let waiting: ServiceWorker | null = null;
let isTaking = false;

/** Puts the new version in place; only ever because the reader pressed the button. */
export function takeUpdate(): void {
  isTaking = true;
  waiting?.postMessage('take-over');
}

/** Works offline from now on where the browser allows it; without one everything works while connected. */
export function followUpdates(): void {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  const { serviceWorker } = navigator;
  const hadVersion = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    if (isTaking) location.reload();
    else if (hadVersion) {
      elsewhere.value = true;
      updateReady.value = false;
    }
  });
  serviceWorker.addEventListener('message', ({ data }) => {
    if (data === 'all-kept') allKept.value = true;
  });
  // not before the page stands: what it fetches comes first
  whenIdle(() => {
    serviceWorker.register('./service-worker.js').then(watch, () => {
      // storage refused, or no secure origin: the page works without
    });
  });
}

function watch(registration: ServiceWorkerRegistration | undefined): void {
  // a browser told to let none in gives none
  if (!registration) return;
  const offer = (worker: ServiceWorker | null) => {
    if (!worker || !navigator.serviceWorker.controller) return;
    waiting = worker;
    updateReady.value = true;
  };
  offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const worker = registration.installing;
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed') offer(worker);
    });
  });
  keepRest(registration);
}

/** The large rest of the files is kept once nothing else is to do. */
function keepRest(registration: ServiceWorkerRegistration): void {
  whenIdle(() => navigator.serviceWorker.ready.then(() => registration.active?.postMessage('keep-rest')));
}

function whenIdle(work: () => void): void {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work, { timeout: 20_000 });
  else setTimeout(work, 3_000);
}
