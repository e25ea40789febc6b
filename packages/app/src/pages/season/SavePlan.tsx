import { classOfType, emptyGarden, plantOutDayOf } from '@neckfall/engine';
import { useId, useRef, useState } from 'preact/hooks';
import { idInAddress } from '../../address/address-form.ts';
import { Fold } from '../../controls/Fold.tsx';
import { GardenSteps } from '../../controls/GardenSteps.tsx';
import { OpenedFile } from '../../controls/OpenedFile.tsx';
import { OpenGarden } from '../../controls/OpenGarden.tsx';
import { isAskedFor, plantingAsked } from '../../garden/asked-of.ts';
import { type PlanToSave, withPlan } from '../../garden/planting-of.ts';
import { changeGarden, gardenHolder, gardenStanding } from '../../state/garden.ts';
import { onion } from '../../state/onion.ts';
import { placeName } from '../../state/place.ts';
import { asked, go, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';

/** The plan among those of the garden on this device: whether it is, and the ways to put it there. */
export function SavePlan({ ahead }: { ahead: SeasonAhead }) {
  const { say } = voice.value;
  const id = useId();
  const shown = planToSave(ahead);
  const [typed, type] = useState<string | null>(null);
  const garden = gardenStanding.value?.garden ?? emptyGarden();
  const saved = plantingAsked(garden, asked.value);
  // a plan that is kept says so, and one taken back is not folded away under the hand
  const wasSaved = useRef(false);
  if (saved) wasSaved.current = true;
  const holder = gardenHolder.value;
  const isAsShown =
    saved &&
    (isAskedFor(garden, saved, asked.value) ||
      JSON.stringify(withPlan(garden, saved.id, shown).garden) === JSON.stringify(garden));

  /** In place of a planting, else beside the others; the garden may have been changed in another tab meanwhile. */
  async function put(inPlaceOf: string | null): Promise<void> {
    let plantingId = '';
    const name = saved && inPlaceOf !== null ? saved.name : typed?.trim() || shown.name;
    const isDone = await changeGarden({ code: inPlaceOf === null ? 'added' : 'changed', name }, (now) => {
      const next = withPlan(now ?? emptyGarden(), inPlaceOf, { ...shown, name });
      plantingId = next.plantingId;
      return next.garden;
    });
    if (!isDone) return;
    type(null);
    go({ planting: idInAddress(plantingId) }, { replace: true });
  }

  return (
    <Fold class="take-along" id="save-plan" title={say('app.garden.keep')} open={wasSaved.current}>
      <p role="status">
        {!saved && say('app.garden.keep.not-yet', { holder })}
        {saved &&
          say(isAsShown ? 'app.garden.keep.is' : 'app.garden.keep.differs', { holder, name: saved.name })}
      </p>
      {!isAsShown && (
        <form
          class="form"
          onSubmit={(event) => {
            event.preventDefault();
            void put(null);
          }}
        >
          <div>
            <label for={id}>{say('app.garden.keep.name')}</label>
            <input
              id={id}
              type="text"
              autocomplete="off"
              value={typed ?? shown.name}
              onInput={(event) => type(event.currentTarget.value)}
            />
          </div>
          <div class="row">
            <button type="submit">
              {saved ? say('app.garden.keep.beside') : say('app.garden.keep.do', { holder })}
            </button>
            {saved && (
              <button type="button" onClick={() => void put(saved.id)}>
                {say('app.garden.keep.again', { name: saved.name })}
              </button>
            )}
          </div>
        </form>
      )}
      {garden.plantings.length > 0 && (
        <p>
          <a href={hrefTo('kept')}>{say('app.garden.link', { holder, plans: garden.plantings.length })}</a>
        </p>
      )}
      <GardenSteps />
      <OpenGarden />
      <OpenedFile />
    </Fold>
  );
}

function planToSave({ summary: { plan } }: SeasonAhead): PlanToSave {
  const { say } = voice.value;
  return {
    asked: asked.value,
    plan: { start: plan.start, startDay: plan.startDay, plantOutDay: plantOutDayOf(plan) },
    class: classOfType[plan.type],
    placeName: asked.value.name ?? placeName.value,
    name: say('app.season.plan.name', {
      onion: onion.value.name ?? say(`type.${plan.type}`),
      start: say(`start.${plan.start}`),
    }),
  };
}
