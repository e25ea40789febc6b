import type { Choice } from '@neckfall/engine';
import { findOwn } from '../../garden/own-onion.ts';
import { ownOnions } from '../../state/garden.ts';
import { hrefOfName } from '../../state/onion-hrefs.ts';
import { voice } from '../../state/settings.ts';

/** A character of no meaning, which no language has in a sentence. */
const gap = '\ue000';

/** Names that are the same as far as is known, each the way to its own page. */
export function Names({ choice: { kind, rank } }: { choice: Choice }) {
  const { say, all, numberRange } = voice.value;
  const isOne = kind.names.length === 1;
  const sentence = say(isOne ? 'app.which.months' : 'app.which.months-same', {
    names: all(kind.names.map(() => gap)),
    months: numberRange(...kind.keepsMonths, 1),
  });
  // what stands before, between and after the names, which are links
  const between = sentence.split(gap);
  return (
    <p class="names" data-rank={rank} data-names={kind.names.join(';')} data-start={kind.start}>
      {kind.names.map((name, at) => [
        between[at],
        <a key={name} href={hrefOfName(name)}>
          {findOwn(ownOnions.value, name) ? say('app.garden.onion.choice', { name }) : name}
        </a>,
      ])}
      {between[kind.names.length]}
    </p>
  );
}
