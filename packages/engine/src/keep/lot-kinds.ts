import { usualMonths } from '../choice/index.ts';
import type { Like } from '../garden/index.ts';
import type { KitchenKind } from './keep-year.ts';
import type { LotStart } from './lot-starts.ts';

/**
 * Of the kinds that can be had for a start those that keep longest, of all and for each want: what keeps less and
 * answers no more is of no use. Kinds that differ in nothing the household asks for are told as one.
 */
export function kindsForStart(
  { plan, winters }: LotStart,
  kinds: readonly KitchenKind[],
  wants: readonly Like[],
): KitchenKind[] {
  const sold = kinds.filter(({ type, start }) => type === plan.type && start === plan.start);
  // where some were bred to winter, they are what is sold to be sown in autumn, and at no other time
  const meant = sold.filter((kind) => kind.winters === winters);
  const asked = (meant.length > 0 ? meant : winters ? sold : []).map((kind) => ({
    ...kind,
    likes: kind.likes.filter((like) => wants.includes(like)),
  }));
  const best = [null, ...wants].flatMap((want) => {
    const answering = asked.filter(({ likes }) => want === null || likes.includes(want));
    return answering.length === 0
      ? []
      : [answering.reduce((a, b) => (usualMonths(b) > usualMonths(a) ? b : a))];
  });
  const alike = (a: KitchenKind, b: KitchenKind) =>
    a.likes.join() === b.likes.join() && a.keepsMonths.join() === b.keepsMonths.join();
  return best
    .filter((kind, at) => best.findIndex((other) => alike(other, kind)) === at)
    .filter((kind) => !best.some((other) => isBeaten(kind, other)))
    .map((kind) => {
      const same = asked.filter((other) => alike(other, kind));
      const keepsFrom = same.every((other) => other.keepsFrom === 'cultivar') ? 'cultivar' : 'type';
      return { ...kind, keepsFrom, names: [...new Set(same.flatMap(({ names }) => names))] };
    });
}

/** Whether another keeps longer and answers all the same wants. */
function isBeaten(kind: KitchenKind, other: KitchenKind): boolean {
  return usualMonths(other) > usualMonths(kind) && kind.likes.every((like) => other.likes.includes(like));
}
