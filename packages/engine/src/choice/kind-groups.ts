import type { OnionType, StartMethod } from '../plant/index.ts';
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
