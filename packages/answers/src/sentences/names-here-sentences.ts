import { type Choice, groupKinds } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { isKnownHere, namesHereFirst, namesKnownHere } from '../facts/index.ts';

const othersSaid = 3;

/** That of all the choices of a list none is known in the country; null where one is. */
export function noNameHereSentence(
  all: readonly Choice[],
  country: string | null,
  speaker: Speaker,
): string | null {
  if (country === null || isKnownHere(all, country)) return null;
  return speaker.say('which.no-name-here', { country: speaker.country(country) });
}

/**
 * That the names of a choice are all from elsewhere, and which of its kind are not; null where one is known in the
 * country, and where nothing in the whole list is.
 */
export function elsewhereSentence(
  choice: Choice,
  all: readonly Choice[],
  country: string | null,
  { say, all: list, country: countryName }: Speaker,
): string | null {
  if (country === null || isKnownHere([choice], country) || !isKnownHere(all, country)) return null;
  const { type, start } = choice.kind;
  const names = namesHereFirst(
    all
      .filter(({ kind }) => kind.type === type && kind.start === start)
      .flatMap(({ kind }) => namesKnownHere(kind.names, country)),
    country,
  ).slice(0, othersSaid);
  const values = { country: countryName(country), told: choice.kind.names.length };
  return names.length === 0
    ? say('which.kind-not-here', values)
    : say('which.others-here', { ...values, names: list(names), count: names.length });
}

/** The kinds among those shown of which no name at all is known in the country; null where there are none. */
export function kindsElsewhereSentence(
  shown: readonly Choice[],
  all: readonly Choice[],
  country: string | null,
  { say, all: list, country: countryName }: Speaker,
): string | null {
  if (country === null || !isKnownHere(all, country)) return null;
  const known = groupKinds(all).filter(({ choices }) => isKnownHere(choices, country));
  const kinds = groupKinds(shown)
    .filter(({ type, start }) => !known.some((group) => group.type === type && group.start === start))
    .map(({ type, start }) => say(`crop-kind.${start}`, { type: say(`type.${type}`) }));
  return kinds.length === 0
    ? null
    : say('which.kinds-not-here', { country: countryName(country), kinds: list(kinds) });
}
