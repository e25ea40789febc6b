import type { Asked } from './address-form.ts';

/** What the address says of one onion; another choice begins without it. */
export const noOnion = {
  class: null,
  cultivar: null,
  packetHours: null,
  packetDays: null,
  skin: null,
  holds: null,
  packet: null,
} as const satisfies Partial<Asked>;
