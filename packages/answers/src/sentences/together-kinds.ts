import { classOfType, type OnionType, type SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { SetBeside } from './together-line.ts';

/** Winters whose coldest nights differ less than this are as cold as each other, °C: a quarter of a hardiness zone (5.6 °C). */
const alikeC = 1.5;

/** Which kind does best in which of the places. */
export function kindsSentence(lines: readonly SetBeside[], { say, all }: Speaker): string {
  const types = [...new Set(lines.filter(doesWell).map(({ summary }) => summary.plan.type))];
  const list = types.map((type) =>
    say('together.kinds.in', {
      type: say(`type.${type}`),
      places: all(lines.filter((line) => doesWell(line) && typeOf(line) === type).map(({ name }) => name)),
    }),
  );
  const none = lines.filter((line) => !doesWell(line)).map(({ name }) => name);
  if (none.length > 0) list.push(say('together.kinds.none', { places: all(none) }));
  return say('together.kinds', { list: all(list) });
}

/**
 * Two of the places whose winters are as cold, and that want onions of different classes; null where no two are so.
 * Classes at the two ends are taken before the middle one, then the winters most alike.
 */
export function zoneSentence(lines: readonly SetBeside[], { say, quantity }: Speaker): string | null {
  const pairs = lines
    .filter(doesWell)
    .flatMap((a, at, well) =>
      well.slice(at + 1).map((b) => ({ a, b, apart: Math.abs(a.coldestC - b.coldestC) })),
    )
    .filter(({ a, b, apart }) => apart < alikeC && classOf(a) !== classOf(b))
    .toSorted((one, other) => Number(isMiddle(one)) - Number(isMiddle(other)) || one.apart - other.apart);
  if (pairs.length === 0) return null;
  const [{ a, b }] = pairs;
  return say('together.zone', {
    a: a.name,
    coldA: quantity('temperature', a.coldestC),
    b: b.name,
    coldB: quantity('temperature', b.coldestC),
    typeA: say(`class.${classOf(a)}`),
    typeB: say(`class.${classOf(b)}`),
  });
}

function doesWell({ summary }: { summary: Pick<SeasonSummary, 'outcome' | 'gamble'> }): boolean {
  return summary.outcome === 'good' || summary.outcome === 'small' || summary.gamble;
}

const typeOf = ({ summary }: SetBeside): OnionType => summary.plan.type;
const classOf = (line: SetBeside) => classOfType[typeOf(line)];
const isMiddle = ({ a, b }: { a: SetBeside; b: SetBeside }) =>
  [a, b].some((line) => classOf(line) === 'intermediate');
