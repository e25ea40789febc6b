import { useState } from 'preact/hooks';
import type { GardenStanding } from '../device/device-garden.ts';
import { fileName } from '../files/file-name.ts';
import { saveFile } from '../files/save-file.ts';
import { changedElsewhere, gardenFault, gardenStanding, redoGarden, undoGarden } from '../state/garden.ts';
import { voice } from '../state/settings.ts';

type Saved = { file: string; failed: string | null };

/** Changes of the kept garden taken back and done again, and the whole of it as a file. */
export function GardenSteps() {
  const { say } = voice.value;
  const [saved, tell] = useState<Saved | null>(null);
  if (!gardenStanding.value) return null;
  const { garden, undo, redo, unkept, isShortened } = gardenStanding.value;
  const file = gardenStanding.value.file ?? fileName([garden?.places[0]?.name ?? ''], '.neckfall.json');

  function save(): void {
    try {
      saveFile(file, new Blob([`${JSON.stringify(garden, null, 2)}\n`], { type: 'application/json' }));
      tell({ file, failed: null });
    } catch (error) {
      tell({ file, failed: (error as Error).message });
    }
  }

  return (
    <>
      <div class="row">
        {undo && (
          <button type="button" onClick={() => void undoGarden()}>
            {say('app.garden.undo', { what: inWords(undo) })}
          </button>
        )}
        {redo && (
          <button type="button" onClick={() => void redoGarden()}>
            {say('app.garden.redo', { what: inWords(redo) })}
          </button>
        )}
        {garden && (
          <button type="button" onClick={save}>
            {say('app.garden.save')}
          </button>
        )}
      </div>
      <p role="status">
        {saved &&
          (saved.failed === null
            ? say('app.garden.saved', { file: saved.file })
            : say('app.garden.save-failed', { file: saved.file, reason: saved.failed }))}
        {changedElsewhere.value && say('app.garden.elsewhere')}{' '}
        {isShortened && unkept === null && say('app.garden.shortened')}
      </p>
      {gardenFault.value !== null && (
        <p role="alert" class="alarm">
          {say('app.garden.fault', { reason: gardenFault.value })}
        </p>
      )}
    </>
  );
}

/** What was done, and whose doing it was. */
function inWords({ code, name, isElsewhere }: NonNullable<GardenStanding['undo']>): string {
  const { say } = voice.value;
  const what = say(`app.garden.step.${code}`, { name });
  return isElsewhere ? say('app.garden.step.elsewhere', { what }) : what;
}
