import type { StartMethod } from '@neckfall/engine';
import { mostBeside } from '../../address/address-form.ts';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

type Props = { name: string; start: StartMethod; isThere?: boolean };

/** Puts an onion beside others, or takes it away again; `isThere`: it stands under them already. */
export function BesideButton({ name, start, isThere = false }: Props) {
  const { say } = voice.value;
  const beside = asked.value.beside ?? [];
  const others = beside.filter((entry) => entry.name !== name || entry.start !== start);
  const isIn = others.length < beside.length;
  const words = say(isIn ? 'app.which.take-away' : 'app.which.put-beside');
  return (
    <>
      <button
        type="button"
        class="plain"
        disabled={!isIn && beside.length >= mostBeside}
        aria-label={say('app.which.for', { what: words, name, start: say(`start.${start}`) })}
        onClick={() => {
          const next = isIn ? others : [...beside, { name, start }];
          go({ beside: next.length > 0 ? next : null }, { replace: true });
        }}
      >
        {words}
      </button>
      {isIn && !isThere && (
        <button type="button" class="plain" onClick={showBeside}>
          {say('app.which.see-beside')}
        </button>
      )}
    </>
  );
}

function showBeside(): void {
  const heading = document.getElementById('beside');
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
}
