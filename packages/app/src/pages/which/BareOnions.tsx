import { canGrow } from '../../garden/own-onion.ts';
import { ownOnions } from '../../state/garden.ts';
import { voice } from '../../state/settings.ts';

/** Onions of the grower's own that are in no list, since too little is known of them. */
export function BareOnions() {
  const { say } = voice.value;
  return (
    <>
      {ownOnions.value
        .filter((own) => !canGrow(own))
        .map(({ id, name }) => (
          <p key={id} class="hint">
            {say('app.garden.onion.bare', { name })}
          </p>
        ))}
    </>
  );
}
