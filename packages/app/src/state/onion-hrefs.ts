import type { Asked } from '../address/address-form.ts';
import { noOnion } from '../address/no-onion.ts';
import { askedOfOwn, findOwn } from '../garden/own-onion.ts';
import { ownOnions } from './garden.ts';
import { onion } from './onion.ts';
import { asked, hrefTo } from './route.ts';

/** The list of what can be had; the kind one comes from goes along, to be found again there. */
export function hrefOfList(): string {
  return hrefTo('which', { ...noOnion, class: asked.value.class ?? onion.value.cultivar?.class ?? null });
}

type Start = NonNullable<Asked['start']>;

/** Addresses of the pages that go on with an onion by name, started so on that day. */
export function onwardTo(cultivar: string, start: Start, date: number) {
  return onward(askedOfName(cultivar), start, date);
}

/** The same with an onion of which the class alone is said. */
export function onwardToClass(dayLengthClass: NonNullable<Asked['class']>, start: Start, date: number) {
  return onward({ ...noOnion, class: dayLengthClass }, start, date);
}

function onward(onion: Partial<Asked>, start: Start, date: number) {
  const chosen = { ...onion, start, plantOut: null };
  return {
    when: hrefTo('when', { ...chosen, date: null }),
    season: hrefTo('season', { ...chosen, date }),
  };
}

/** The page of one onion, its ways of starting set side by side. */
export function hrefOfName(cultivar: string): string {
  return hrefTo('which', askedOfName(cultivar));
}

function askedOfName(cultivar: string): Partial<Asked> {
  const own = findOwn(ownOnions.value, cultivar);
  return { ...noOnion, ...(own ? askedOfOwn(own) : { cultivar }) };
}
