import { defaultPlantValues, type OnionType, plantValuesOf, type StartMethod } from '../plant/index.ts';
import type { Choice } from './rank.ts';

/** Choices of one type started one way: what a grower decides before any name. */
export type KindGroup = {
  type: OnionType;
  start: StartMethod;
  /** In the order of their ranks, the best first. */
  choices: readonly Choice[];
};

/** Groups in the order of their best. */
export function groupKinds(choices: readonly Choice[]): KindGroup[] {
  const groups = new Map<string, KindGroup & { choices: Choice[] }>();
  for (const choice of choices) {
    const { type, start } = choice.kind;
    const group = groups.get(`${type} ${start}`);
    if (group) group.choices.push(choice);
    else groups.set(`${type} ${start}`, { type, start, choices: [choice] });
  }
  return [...groups.values()];
}

/** What stands for a group: of its best the one most like the kind as such, which starts when that does. */
export function typicalOf({ choices }: KindGroup): Choice {
  const [first] = choices;
  return choices
    .filter(({ rank }) => rank === first.rank)
    .reduce((a, b) => (unlikeType(b) < unlikeType(a) ? b : a));
}

/** How far a plant's values lie from its type's, in shares of these. */
function unlikeType({ kind }: Choice): number {
  const usual = defaultPlantValues.types[kind.type];
  const own = plantValuesOf(defaultPlantValues, kind);
  const values = ['criticalPhotoperiodH', 'ripeningTT', 'vernalHalfD', 'dryMatterShare'] as const;
  return values.reduce((sum, value) => sum + Math.abs(own[value] / usual[value] - 1), 0);
}

/** Deals kinds into so many shares of about equal work, each type and start whole in one of them. */
export function dealKinds<Dealt extends { type: OnionType; start: StartMethod }>(
  kinds: readonly Dealt[],
  shares: number,
): Dealt[][] {
  const byWay = new Map<string, Dealt[]>();
  for (const kind of kinds) {
    const key = `${kind.type} ${kind.start}`;
    const way = byWay.get(key);
    if (way) way.push(kind);
    else byWay.set(key, [kind]);
  }
  const dealt: Dealt[][] = Array.from({ length: shares }, () => []);
  for (const way of [...byWay.values()].sort((a, b) => b.length - a.length)) {
    dealt.reduce((a, b) => (b.length < a.length ? b : a)).push(...way);
  }
  return dealt;
}
