import { emptyGarden, type Garden } from '@neckfall/engine';
import { GardenSteps } from '../../controls/GardenSteps.tsx';
import { Mended, OpenedFile } from '../../controls/OpenedFile.tsx';
import { OpenGarden } from '../../controls/OpenGarden.tsx';
import { Working } from '../../controls/Working.tsx';
import { changeGarden, gardenHolder, gardenStanding, wipeGarden } from '../../state/garden.ts';
import { voice } from '../../state/settings.ts';
import { OwnOnions } from './OwnOnions.tsx';
import { Plans } from './Plans.tsx';
import '../../look/garden.css';

/** The garden that this browser holds: plans by place, onions of one's own, and the ways to take them along or away. */
export function GardenPage() {
  const { say } = voice.value;
  const standing = gardenStanding.value;
  if (standing === null) {
    return (
      <>
        <h1>{say('app.page.kept')}</h1>
        <Working />
      </>
    );
  }
  const { garden, undo, mended } = standing;
  const holder = gardenHolder.value;
  return (
    <div class="garden">
      <h1 class="answer">{titleOf(garden)}</h1>
      <p>{garden ? say('app.garden.lead', { holder }) : say('app.garden.none.how')}</p>
      <OpenedFile />
      {mended.length > 0 && (
        <div role="status">
          <p>{say('app.garden.mended')}</p>
          <Mended changes={mended} />
        </div>
      )}
      <Plans garden={garden ?? emptyGarden()} />
      {garden && garden.cultivars.length > 0 && <OwnOnions own={garden.cultivars} />}
      <section aria-labelledby="as-file">
        <h2 id="as-file">{say('app.garden.file')}</h2>
        <GardenSteps />
        <OpenGarden />
      </section>
      {garden && (
        <p>
          <button
            type="button"
            onClick={() => void changeGarden({ code: 'forgotten', name: '' }, () => null)}
          >
            {say('app.garden.forget')}
          </button>
        </p>
      )}
      {!garden && undo && (
        <>
          <p>
            <button type="button" aria-describedby="wipe-hint" onClick={() => void wipeGarden()}>
              {say('app.garden.wipe', { holder })}
            </button>
          </p>
          <p id="wipe-hint" class="hint">
            {say('app.garden.wipe.how')}
          </p>
        </>
      )}
    </div>
  );
}

function titleOf(garden: Garden | null): string {
  const { say } = voice.value;
  const holder = gardenHolder.value;
  if (!garden) return say('app.garden.none', { holder });
  return say('app.garden.title', {
    holder,
    plans: garden.plantings.length,
    onions: garden.cultivars.length,
  });
}
