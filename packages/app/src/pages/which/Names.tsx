import type { Choice } from '@neckfall/engine';
import type { Locale } from '@neckfall/words';
import { findOwn } from '../../save/own-onion.ts';
import { ownOnions } from '../../state/garden.ts';
import { voice } from '../../state/settings.ts';
import { hrefOfName } from './address-of.ts';

/** Names that are the same as far as is known, each the way to its own page. */
export function Names({ choice: { kind, rank } }: { choice: Choice }) {
  const { say, numberRange, locale } = voice.value;
  const isOne = kind.names.length === 1;
  const parts = listOf(locale).formatToParts(kind.names);
  return (
    <p class="names" data-rank={rank} data-names={kind.names.join(';')} data-start={kind.start}>
      {parts.map(({ type, value }) =>
        type === 'element' ? (
          <a key={value} href={hrefOfName(value)}>
            {findOwn(ownOnions.value, value) ? say('app.garden.onion.choice', { name: value }) : value}
          </a>
        ) : (
          value
        ),
      )}
      {say(isOne ? 'app.which.months' : 'app.which.months-same', {
        months: numberRange(...kind.keepsMonths, 1),
      })}
    </p>
  );
}

const lists = new Map<Locale, Intl.ListFormat>();

function listOf(locale: Locale): Intl.ListFormat {
  let list = lists.get(locale);
  if (!list) {
    list = new Intl.ListFormat(locale, { type: 'conjunction' });
    lists.set(locale, list);
  }
  return list;
}
