import { cultivars, nearnesses, nearnessOf } from '@neckfall/data';
import { type Choice, groupKinds, type Kind, type KindGroup } from '@neckfall/engine';

const byName = /* @__PURE__ */ new Map(
  /* @__PURE__ */ cultivars.map((cultivar) => [cultivar.name, cultivar]),
);

/** Sorting asks for each many times. */
const stepsKnown = /* @__PURE__ */ new Map<string, number>();

/** Steps from the shops of a country, 0 the nearest. Onions of the grower's own are at hand. */
function stepsTo(name: string, country: string): number {
  const key = `${country} ${name}`;
  let steps = stepsKnown.get(key);
  if (steps === undefined) {
    const cultivar = byName.get(name);
    steps = cultivar ? nearnesses.indexOf(nearnessOf(cultivar, country)) : 0;
    stepsKnown.set(key, steps);
  }
  return steps;
}

/** Names in the order in which they can be had in a country; as they were where it is not known. */
export function namesHereFirst(names: readonly string[], country: string | null): readonly string[] {
  if (country === null) return names;
  return [...names].sort((a, b) => stepsTo(a, country) - stepsTo(b, country));
}

/** The step up to which a name counts as known in a country. */
const knownStep = /* @__PURE__ */ nearnesses.indexOf('grown');

function nearestStep(choices: readonly Choice[], country: string): number {
  return Math.min(...choices.flatMap(({ kind }) => kind.names.map((name) => stepsTo(name, country))));
}

/** Those of the names that are known to be sold or grown in the country. */
export function namesKnownHere(names: readonly string[], country: string): readonly string[] {
  return names.filter((name) => stepsTo(name, country) <= knownStep);
}

/** Whether a name of these choices is known to be sold or grown in the country. */
export function isKnownHere(choices: readonly Choice[], country: string): boolean {
  return nearestStep(choices, country) <= knownStep;
}

/**
 * Choices in their ranks; where they share one, kinds with names that are known in the country come first, of these the one
 * that leads elsewhere, and such names first inside each kind.
 */
export function choicesHereFirst(
  choices: readonly Choice[],
  country: string | null,
  lead: Pick<Kind, 'type' | 'start'> | null = null,
): readonly Choice[] {
  const isLead = ({ type, start }: KindGroup) => type === lead?.type && start === lead.start;
  const far = (group: KindGroup) =>
    country === null ? 0 : Math.max(knownStep, nearestStep(group.choices, country));
  const ordered: Choice[] = [];
  for (let from = 0; from < choices.length; ) {
    const level = choices.filter(({ rank }) => rank === choices[from].rank);
    const kinds = groupKinds(level).sort((a, b) => far(a) - far(b) || Number(isLead(b)) - Number(isLead(a)));
    for (const { choices: ofKind } of kinds) {
      ordered.push(
        ...(country === null
          ? ofKind
          : [...ofKind].sort((a, b) => nearestStep([a], country) - nearestStep([b], country))),
      );
    }
    from += level.length;
  }
  return ordered.map((choice) => ({
    ...choice,
    kind: { ...choice.kind, names: namesHereFirst(choice.kind.names, country) },
  }));
}
