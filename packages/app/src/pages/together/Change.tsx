import { useRef, useState } from 'preact/hooks';
import { placeName } from '../../state/place.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { AddStart } from './AddStart.tsx';
import { AddTown } from './AddTown.tsx';
import type { LineFound } from './drawn-lines.ts';
import { Entries } from './Entries.tsx';
import type { LineAsked } from './line-asked.ts';
import { OnionOfAll } from './OnionOfAll.tsx';
import { Ready } from './Ready.tsx';
import { type Comparison, ownPlace } from './use-comparison.ts';

type Props = { comparison: Comparison; found: readonly { asked: LineAsked; found: LineFound }[] };

/** What is compared: taken away, put elsewhere, added to, or exchanged for another set. */
export function Change({ comparison, found }: Props) {
  const { say } = voice.value;
  const { compared, best } = comparison;
  const [told, tell] = useState('');
  const heading = useRef<HTMLHeadingElement>(null);
  return (
    <section aria-labelledby="change" class="change on-screen">
      <h2 id="change" ref={heading} tabIndex={-1}>
        {say('app.together.change')}
      </h2>
      <Entries
        comparison={comparison}
        found={found}
        onGone={(name) => {
          tell(name);
          heading.current?.focus();
        }}
      />
      {compared === 'places' ? (
        <AddTown places={comparison.places} tell={tell} />
      ) : (
        best && <AddStart found={found} tell={tell} />
      )}
      <p role="status">{told}</p>
      <OnionOfAll compared={compared} />
      <Ready best={best} />
      <p>
        {compared === 'starts' ? (
          <a href={hrefTo('together', { starts: null })}>{say('app.together.to-places')}</a>
        ) : (
          ownPlace(asked.value) && (
            <a href={hrefTo('together', { starts: '', start: null })}>
              {say('app.together.to-starts', { place: placeName.value })}
            </a>
          )
        )}
      </p>
    </section>
  );
}
