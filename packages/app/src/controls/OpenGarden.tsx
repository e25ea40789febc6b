import { type Garden, mostLevels } from '@neckfall/engine';
import { useId, useState } from 'preact/hooks';
import type { GardenRefusal } from '../files/read-garden.ts';
import { askedOf, askedOfPlace } from '../garden/asked-of.ts';
import { newId } from '../garden/new-id.ts';
import { changeGarden, gardenStanding, openedFile } from '../state/garden.ts';
import { asked, go } from '../state/route.ts';
import { voice } from '../state/settings.ts';

/** Opens a garden file: its one plan at once, of several the reader picks. A file that is none changes nothing. */
export function OpenGarden() {
  const { say } = voice.value;
  const id = useId();
  const [refused, refuse] = useState<{ file: string; refusal: GardenRefusal } | null>(null);
  const hasGarden = gardenStanding.value?.garden != null;

  async function take(input: HTMLInputElement): Promise<void> {
    const [picked] = input.files ?? [];
    if (!picked) return;
    const { readGarden } = await import('../files/read-garden.ts');
    const found = await readGarden(picked, newId);
    // the same file may be chosen again, once it is mended
    input.value = '';
    if ('problem' in found) {
      refuse({ file: picked.name, refusal: found });
      return;
    }
    refuse(null);
    const { garden, changes } = found;
    const hadGarden = gardenStanding.value?.garden != null;
    if (!(await changeGarden({ code: 'opened', name: picked.name }, () => garden, picked.name))) return;
    const [only, ...others] = garden.plantings;
    const shown = only && others.length === 0 ? only : null;
    openedFile.value = {
      file: picked.name,
      changes,
      plan: shown?.name ?? null,
      hasPlace: shown !== null && garden.places.some((place) => place.id === shown.placeId),
      hadGarden,
    };
    go(
      { ...firstPlace(garden), ...(shown ? askedOf(garden, shown) : { planting: null }) },
      { to: shown ? 'season' : 'kept' },
    );
  }

  return (
    <div class="open">
      <label for={id}>{say('app.garden.open')}</label>
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        aria-describedby={`${id}-hint`}
        onChange={(event) => void take(event.currentTarget)}
      />
      <p id={`${id}-hint`} class="hint">
        {say('app.garden.open.hint')} {hasGarden && say('app.garden.open.replaces')}
      </p>
      {refused && <Refused {...refused} />}
    </div>
  );
}

/** Where no place is known yet, the first of the garden is taken. */
function firstPlace({ places: [first] }: Garden): Partial<ReturnType<typeof askedOfPlace>> {
  return asked.value.at === null && first ? askedOfPlace(first) : {};
}

function Refused({ file, refusal }: { file: string; refusal: GardenRefusal }) {
  return (
    <p role="alert" class="alarm">
      {refusalSentence(refusal, file)}
    </p>
  );
}

function refusalSentence(refusal: GardenRefusal, file: string): string {
  const { say, number } = voice.value;
  switch (refusal.problem) {
    case 'too-big':
      return say('app.garden.refused.too-big', {
        file,
        size: number(refusal.bytes / 1e6, 1),
        limit: number(refusal.most / 1e6),
      });
    case 'too-many': {
      const { list, count, most } = refusal;
      return say('app.garden.refused.too-many', { file, list, count, most });
    }
    case 'unreadable':
      return say('app.garden.refused.unreadable', { file, reason: refusal.reason });
    case 'not-text':
      return say('app.garden.refused.not-text', { file });
    case 'not-json':
      return say('app.garden.refused.not-json', { file, reason: refusal.reason });
    case 'too-deep':
      return say('app.garden.refused.too-deep', { file, levels: mostLevels });
    case 'not-garden':
      return say('app.garden.refused.not-garden', { file, found: refusal.found });
  }
}
