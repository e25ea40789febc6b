import { emptyGarden, type OwnCultivar } from '@neckfall/engine';
import { useId, useState } from 'preact/hooks';
import { nameInAddress } from '../../address/address-form.ts';
import { newId } from '../../garden/new-id.ts';
import { askedOfOwn, findOwn } from '../../garden/own-onion.ts';
import { changeGarden, gardenHolder, ownOnions } from '../../state/garden.ts';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** Short enough to be said, and to go into a link. */
const longest = 80;

/** Saves what a packet says under a name, as an onion of the grower's own. */
export function SaveOnion({ named }: { named: string | null }) {
  const { say } = voice.value;
  const id = useId();
  const [name, setName] = useState(named ?? '');
  const clean = nameInAddress(name);
  const isTaken = findOwn(ownOnions.value, name) !== undefined;

  async function save(): Promise<void> {
    const { class: printed, packetHours, packetDays } = asked.value;
    const onion = { name: clean ?? '', class: printed, packetHours, packetDays, keepsMonths: null };
    const isDone = await changeGarden({ code: 'onion-added', name: onion.name }, (now) => {
      const garden = now ?? emptyGarden();
      const added: OwnCultivar = { id: newId(), ...onion };
      return { ...garden, cultivars: [...garden.cultivars, added] };
    });
    if (isDone) go(askedOfOwn({ id: '', ...onion }), { replace: true });
  }

  return (
    <details>
      <summary>{say('app.garden.onion.name')}</summary>
      <form
        class="form"
        onSubmit={(event) => {
          event.preventDefault();
          if (clean !== null && !isTaken) void save();
        }}
      >
        <div>
          <label for={id}>{say('app.garden.keep.name')}</label>
          <input
            id={id}
            type="text"
            required
            maxLength={longest}
            autocomplete="off"
            aria-invalid={isTaken}
            aria-describedby={`${id}-hint`}
            value={name}
            onInput={(event) => setName(event.currentTarget.value)}
          />
          <p id={`${id}-hint`} class={isTaken ? 'alarm' : 'hint'}>
            {isTaken
              ? say('app.garden.onion.taken', { name: name.trim() })
              : say('app.garden.onion.hint', { holder: gardenHolder.value })}
          </p>
        </div>
        <button type="submit">{say('app.garden.onion.keep')}</button>
      </form>
    </details>
  );
}
