import { type StoreClimate, storeClimateOf } from '../keep/index.ts';
import { mean } from '../math/index.ts';
import type { StoreAsked, Trial } from './season-facts.ts';
import type { CauseTrial } from './trials.ts';

/** Air that keeps onions best at home, °C and % (seen: 0 °C and 65–70 %, UC Davis; a little above frost is within reach). */
const good = { tempC: 2, humidityPct: 65 } as const;
/** A damp place, % (memory); frost that a shed may let in on top of its usual, °C (memory). */
const dampPct = 90;
const colderByC = 5;
/** No frost reaches bulbs above this, °C. */
const frostFreeC = 1;
/** A good keeper (memory: globes), and a kind that keeps for less than is called a short keeper, months. */
const shortUnderMonths = 4.5;
const keeperMonths = [6, 8] as const;
/** Bulbs lifted with green tops: so many necks stay thick (memory). */
const greenShare = 0.6;
/** Of ripe bulbs no more than so many have one (memory). */
const ripeShare = 0.05;
/** How often a store nobody told of is warm, damp or frosty, and bulbs are lifted green without being said to be (memory). */
const unsaid = { warm: 0.3, damp: 0.2, frosty: 0.1, liftedGreen: 0.25 } as const;
/** How readily each is the cause where it lies in what was told (memory). */
const told = { warm: 0.9, damp: 0.9, frost: 1, short: 1, unripe: 1 } as const;

/** Other air, another kind and riper bulbs, for what went wrong in store. */
export function storeTrials(trial: Trial, isStoreSaid: boolean): CauseTrial[] {
  const { store } = trial;
  if (store === null) return [];
  const { air } = store;
  const of = (changed: Partial<StoreAsked>): Trial => ({ ...trial, store: { ...store, ...changed } });
  const inAir = (tempC: (of: number) => number, humidityPct: (of: number) => number): Trial =>
    of({ air: { tempC: air.tempC.map(tempC), humidityPct: air.humidityPct.map(humidityPct) } });
  const same = (value: number) => value;
  const cool = { code: 'cool-store', tempC: good.tempC } as const;
  const dry = { code: 'dry-store', humidityPct: good.humidityPct } as const;
  const trials: CauseTrial[] = [
    {
      cause: 'warm-store',
      prior: told.warm,
      told: true,
      without: [{ trial: inAir((temp) => Math.min(temp, good.tempC), same), change: cool }],
    },
    {
      cause: 'damp-store',
      prior: told.damp,
      told: true,
      without: [{ trial: inAir(same, (pct) => Math.min(pct, good.humidityPct)), change: dry }],
    },
    {
      cause: 'frozen-store',
      prior: told.frost,
      told: true,
      without: [
        {
          trial: inAir((temp) => Math.max(temp, frostFreeC), same),
          change: { code: 'frost-free-store' },
        },
      ],
    },
    {
      cause: 'lifted-unripe',
      prior: unsaid.liftedGreen,
      told: false,
      within: [of({ thickNecks: [greenShare, 1] })],
      change: { code: 'lifted-ripe' },
    },
    {
      cause: 'lifted-unripe',
      prior: told.unripe,
      told: true,
      without: [{ trial: of({ thickNecks: [0, ripeShare] }), change: { code: 'lifted-ripe' } }],
    },
  ];
  if (mean(store.keepsMonths) < shortUnderMonths)
    trials.push({
      cause: 'short-keeper',
      prior: told.short,
      told: true,
      without: [
        {
          trial: of({ keepsMonths: keeperMonths }),
          change: { code: 'better-keeper', months: keeperMonths[0] },
        },
      ],
    });
  if (isStoreSaid) return trials;
  const usualOf = (place: 'kitchen'): StoreClimate => storeClimateOf(trial.site.climate, place);
  return [
    ...trials,
    {
      cause: 'warm-store',
      prior: unsaid.warm,
      told: false,
      within: [of({ air: usualOf('kitchen') })],
      change: cool,
    },
    {
      cause: 'damp-store',
      prior: unsaid.damp,
      told: false,
      within: [inAir(same, (pct) => Math.max(pct, dampPct))],
      change: dry,
    },
    {
      cause: 'frozen-store',
      prior: unsaid.frosty,
      told: false,
      within: [inAir((temp) => temp - colderByC, same)],
      change: { code: 'frost-free-store' },
    },
  ];
}
