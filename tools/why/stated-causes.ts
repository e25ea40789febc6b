import type { Cause } from '../../packages/engine/src/index.ts';

const cold = ['cold-on-large-plants'] as const;
const late = ['started-too-late'] as const;
const early = ['type-too-early'] as const;

/** What the sources of the published calendars give as the cause of each failure, in our causes; two where they name two. */
export const statedCauses: ReadonlyMap<string, readonly Cause[]> = new Map<string, readonly Cause[]>([
  ['us-nm-early-bolt', cold],
  ['us-nm-late', late],
  ['us-or-nwrec-77a', cold],
  ['us-or-nwrec-77b', ['winter-cold']],
  ['us-ks-short', early],
  ['us-ut-short', early],
  ['mx-delicias-bolt', cold],
  ['za-bloem-8jun', late],
  ['za-adelaide-seed', ['days-too-short', 'started-too-late']],
  ['tr-kayseri-seed', late],
  ['ir-neyshabur-late', late],
  ['eg-sakha-late', late],
  ['sd-shambat-jan', ['heat', 'started-too-late']],
  ['sd-khartoum-sets', ['large-sets']],
  ['bd-faridpur-15nov', cold],
  ['bd-faridpur-29jan', ['heat', 'started-too-late']],
  ['ph-nueva-ecija-late', ['heat']],
  ['kr-gyeongnam-warm', cold],
  ['uk-spring-late', late],
  ['us-ky-ow-int', cold],
  ['us-ky-ow-short', early],
  ['us-mn-short', early],
  ['de-ow-early', cold],
  ['nz-puk-early', cold],
  ['nz-puk-late', late],
  ['nz-canterbury-foreign', cold],
]);
