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

/** Why Why misses the stated cause of a failure. */
export const missReasons: ReadonlyMap<string, string> = new Map([
  ['za-adelaide-seed', 'the model lets it winter and bulb in the spring after; nobody waited for that'],
  ['ph-nueva-ecija-late', 'started late, it ran into the heat: the model puts the start first, heat second'],
  ['us-ky-ow-short', 'bulbs that begin in the seedling tray are not in the model'],
  [
    'Sapporo, sown beside the sets on 29 April: 21 g',
    'the model grows full bulbs from a sowing so soon after the snow',
  ],
  [
    'Bila Tserkva, sown 20 April: half of what was sown before winter',
    'the model grows good bulbs from it; half of a larger crop is not small there',
  ],
]);
