import { computed, signal } from '@preact/signals';
import {
  type Address,
  isOfPlace,
  nothingAsked,
  type PageName,
  readAddress,
  writeAddress,
} from '../address/address.ts';
import type { Asked } from '../address/address-form.ts';
import { remember, remembered } from '../device/remembered.ts';

const current = signal<Address>(first());

/** Page and everything asked, as the address bar has it. */
export const address = computed(() => current.value);
export const page = computed(() => current.value.page);
export const asked = computed(() => current.value.asked);

function first(): Address {
  // a visit without a link opens where the last one ended
  if (location.hash.length < 3) {
    const last = remembered('last');
    if (last) history.replaceState(null, '', writeRead(last));
  }
  return readAddress(location.hash);
}

/** Written anew, so that nothing but what we understand gets into the address bar. */
function writeRead(hash: string): string {
  const { page, asked } = readAddress(hash);
  return writeAddress(page, { ...asked, today: null });
}

/** The address of a page with some of what is asked changed: for `href`. */
export function hrefTo(to: PageName, changes: Partial<Asked> = {}): string {
  return writeAddress(to, { ...asked.value, ...changes });
}

/** Changes what is asked, and the page where one is named. `replace`: without a step in the history. */
export function go(
  changes: Partial<Asked>,
  { to = page.value, replace = false }: { to?: PageName; replace?: boolean } = {},
): void {
  const hash = hrefTo(to, changes);
  if (hash === location.hash) return;
  history[replace ? 'replaceState' : 'pushState'](null, '', hash);
  arrive();
}

/** Another place: what was chosen for the last one (dates, elevation) does not go with it. */
export function goToPlace(place: Pick<Asked, 'at' | 'name' | 'elevation'>): void {
  go(
    { ...place, date: null, plantOut: null, planting: null, bed: null },
    { to: isOfPlace(page.value) ? page.value : 'where' },
  );
}

export function forgetPlace(): void {
  remember('last', null);
  history.pushState(null, '', writeAddress('where', nothingAsked));
  current.value = readAddress(location.hash);
}

function arrive(): void {
  current.value = readAddress(location.hash);
  if (current.value.asked.at) remember('last', location.hash);
}

/** Follows links, back and forward. */
export function followAddress(): void {
  addEventListener('popstate', arrive);
  addEventListener('hashchange', arrive);
  arrive();
}
