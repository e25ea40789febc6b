import type { StartMethod } from './kinds.ts';

/** What a way of starting is, as far as plants, beds and shops are concerned. */
export type StartWay = {
  /** What goes into bed or tray; plants and sets are grown elsewhere and bought. */
  from: 'seed' | 'plants' | 'sets';
  /** Whether it grows in trays first, which wait for no bed and may be kept warm and lit. */
  standsInTrays: boolean;
  /** Whether it is moved into its bed in leaf, and has to root there before it grows. */
  rootsAnew: boolean;
  /** What is seen of it first; null: it comes in leaf. */
  comesUp: 'emergence' | 'sprouting' | null;
  /** Share of the cold in the bed that counts towards flowers. */
  coldPace: number;
};

/** The fate of sets has mostly been settled by their store (set by hand: Sapporo; spring sets in Germany). */
const setColdPace = 0.1;

/** What tells the ways of starting apart in a run. */
export const startWays: Readonly<Record<StartMethod, StartWay>> = {
  'direct-seed': { from: 'seed', standsInTrays: false, rootsAnew: false, comesUp: 'emergence', coldPace: 1 },
  'raised-seedlings': {
    from: 'seed',
    standsInTrays: true,
    rootsAnew: true,
    comesUp: 'emergence',
    coldPace: 1,
  },
  'bought-transplants': { from: 'plants', standsInTrays: false, rootsAnew: true, comesUp: null, coldPace: 1 },
  sets: {
    from: 'sets',
    standsInTrays: false,
    rootsAnew: false,
    comesUp: 'sprouting',
    coldPace: setColdPace,
  },
};
