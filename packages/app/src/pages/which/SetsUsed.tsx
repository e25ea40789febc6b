import { type Choice, planDefaults } from '@neckfall/engine';
import { useRef } from 'preact/hooks';
import { SetFields } from '../../controls/SetFields.tsx';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { bestOf } from './best-of.ts';

/**
 * Which sets are meant, where the answer speaks of any: their size and storing decide how many run to flower. What
 * was said of them can be taken back even where their crop is too poor to be shown.
 */
export function SetsUsed({ choices }: { choices: readonly Choice[] | null }) {
  const { say, quantity } = voice.value;
  const { setSize, setStore } = asked.value;
  const last = useRef(choices ?? []);
  // while others are being grown, the fields stay as they are
  if (choices) last.current = choices;
  const isMeant = bestOf(last.current).some(({ kind }) => kind.start === 'sets');
  if (!isMeant && setSize === null && setStore === null) return null;
  const size = setSize ?? planDefaults.setSizeMm;
  const store = setStore ?? planDefaults.setStore;
  return (
    <details class="sets-used">
      <summary>
        {say('app.which.sets.are', { size: quantity('bulbLength', size), store: say(`store.${store}`) })}{' '}
        {say('app.which.sets.change')}
      </summary>
      <form class="form" onSubmit={(event) => event.preventDefault()}>
        <SetFields setSizeMm={size} setStore={store} />
      </form>
    </details>
  );
}
