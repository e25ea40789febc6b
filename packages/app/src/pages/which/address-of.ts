import type { Asked } from '../../state/address-form.ts';
import { hrefTo } from '../../state/route.ts';

/** What the address says of one onion; another choice begins without it. */
export const noOnion = {
  class: null,
  cultivar: null,
  packetHours: null,
  packetDays: null,
  packet: null,
} as const satisfies Partial<Asked>;

/** Addresses of the pages that go on with an onion by name, started so on that day. */
export function onwardTo(cultivar: string, start: NonNullable<Asked['start']>, date: number) {
  const chosen = { ...noOnion, cultivar, start, plantOut: null };
  return {
    when: hrefTo('when', { ...chosen, date: null }),
    season: hrefTo('season', { ...chosen, date }),
  };
}

/** The page of one onion, its ways of starting set side by side. */
export function hrefOfName(cultivar: string): string {
  return hrefTo('which', { ...noOnion, cultivar });
}
