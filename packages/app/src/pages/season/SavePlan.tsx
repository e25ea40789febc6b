import { emptyGarden, type Garden } from '@neckfall/engine';
import { useId, useRef, useState } from 'preact/hooks';
import { Fold } from '../../controls/Fold.tsx';
import { GardenSteps } from '../../controls/GardenSteps.tsx';
import { OpenedFile } from '../../controls/OpenedFile.tsx';
import { OpenGarden } from '../../controls/OpenGarden.tsx';
import { isAskedFor, plantingAsked } from '../../garden/asked-of.ts';
import { withPlan } from '../../garden/planting-of.ts';
import { gardenHolder, gardenStanding } from '../../state/garden.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
import { keepPlan, planToSave } from './keep-plan.ts';

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
      plansOf(withPlan(garden, saved.id, shown).garden) === plansOf(garden));

  async function put(inPlaceOf: string | null): Promise<void> {
    const name = saved && inPlaceOf !== null ? saved.name : typed?.trim() || shown.name;
    if ((await keepPlan({ ...shown, name }, inPlaceOf)) !== null) type(null);
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

/** All that keeping a plan changes. */
function plansOf({ places, plantings }: Garden): string {
  return JSON.stringify([places, plantings]);
}
