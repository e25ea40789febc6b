import type { DayNumber, Plan } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { DistanceFields } from '../../controls/DistanceFields.tsx';
import { GrowingFields } from '../../controls/GrowingFields.tsx';
import { OnionFields } from '../../controls/OnionFields.tsx';
import { StoreFields } from '../../controls/StoreFields.tsx';
import { askedOf } from '../../garden/asked-of.ts';
import { isAt } from '../../garden/near.ts';
import { gardenStanding } from '../../state/garden.ts';
import { onion } from '../../state/onion.ts';
import { spacing } from '../../state/plan-asked.ts';
import { planNotes } from '../../state/plan-notes.ts';
import { planting } from '../../state/planting.ts';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { NoticedField } from './NoticedField.tsx';
import { heldBy } from './why-crop.ts';

/** What was taken for the reader is chosen anew with each thing that is said. */
const along = { taken: null };

type Props = {
  plan: Plan;
  /** Its tops go over; null: mostly never. */
  neckFall: DayNumber | null;
  /** Whether something was seen in store. */
  inStore: boolean;
};

/** The crop that is asked about in a line, and folded under it all that can be said of it. */
export function CropLine({ plan, neckFall, inStore }: Props) {
  const { say, dayWithYear } = voice.value;
  const [isOpen, open] = useState(false);
  const { name } = onion.value;
  const line = say('app.season.plan.is', {
    onion: name ?? say(`type.${plan.type}`),
    start: say(`start.${plan.start}`),
    date: dayWithYear(plan.startDay),
  });
  return (
    <div class="crop-line">
      <details class="plan" onToggle={(event) => open(event.currentTarget.open)}>
        <summary>
          {line} <span class="to-press">{say('app.season.plan.change')}</span>
        </summary>
        {isOpen && (
          <form class="form" onSubmit={(event) => event.preventDefault()}>
            <PlantingField />
            <OnionFields held={heldBy(plan)} along={along} />
            <label class="wide">
              <input
                type="checkbox"
                checked={asked.value.isAbout === true}
                onChange={(event) =>
                  go({ isAbout: event.currentTarget.checked ? true : null }, { replace: true })
                }
              />
              {say('app.why.about')}
            </label>
            <GrowingFields plan={plan} />
            <DistanceFields spacing={spacing.value} onValue={(changes) => go(changes, { replace: true })} />
            {inStore && <NoticedField plan={plan} neckFall={neckFall} />}
            {inStore && <StoreFields />}
          </form>
        )}
      </details>
      {planNotes(plan, 'app.why.crop.chosen').map((note) => (
        <p key={note} class="hint" role="status">
          {note}
        </p>
      ))}
      {planting.value && <p class="hint">{say('app.why.crop.learns')}</p>}
    </div>
  );
}

/** One of the crops that are kept here, or any other. */
function PlantingField() {
  const { say } = voice.value;
  const garden = gardenStanding.value?.garden ?? null;
  if (!garden) return null;
  const here = garden.places.filter((place) => isAt(place, asked.value.at)).map(({ id }) => id);
  const current = planting.value;
  const offered = garden.plantings.filter(
    (one) => one === current || (one.placeId !== null && here.includes(one.placeId)),
  );
  if (offered.length === 0) return null;
  const choose = (value: string) => {
    const one = offered.find(({ id }) => value === `kept ${id}`);
    go(one ? { ...along, ...askedOf(garden, one) } : { ...along, planting: null, bed: null });
  };
  return (
    <ChoiceField
      label={say('app.why.crop.which')}
      value={current ? `kept ${current.id}` : 'free'}
      options={[
        { value: 'free', label: say('app.why.crop.free') },
        ...offered.map(({ id, name }) => ({ value: `kept ${id}`, label: name })),
      ]}
      onValue={choose}
    />
  );
}
