import type { Garden, GardenChange, GardenPlanting } from '@neckfall/engine';
import { useId, useState } from 'preact/hooks';
import { askedOf } from '../../save/asked-of.ts';
import { openedGarden } from '../../save/opened-garden.ts';
import { type GardenRefusal, mostBytes, readGarden } from '../../save/read-garden.ts';
import { go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

type Read =
  | { file: string; refusal: GardenRefusal }
  | { file: string; garden: Garden; changes: readonly GardenChange[] };

const mostTold = 8;

/** Opens a garden file: one plan at once, of several the reader picks. A file that is none changes nothing. */
export function OpenGarden() {
  const { say } = voice.value;
  const id = useId();
  const [read, setRead] = useState<Read | null>(null);

  async function take(input: HTMLInputElement): Promise<void> {
    const [picked] = input.files ?? [];
    if (!picked) return;
    const found = await readGarden(picked);
    // the same file may be chosen again, once it is mended
    input.value = '';
    if ('problem' in found) {
      setRead({ file: picked.name, refusal: found });
      return;
    }
    const { garden, changes } = found;
    openedGarden.value = { garden, file: picked.name, plantingId: null };
    setRead({ file: picked.name, garden, changes });
    if (garden.plantings.length === 1) show(garden, garden.plantings[0], picked.name);
  }

  return (
    <div class="open">
      <label for={id}>{say('app.season.open')}</label>
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        aria-describedby={`${id}-hint`}
        onChange={(event) => void take(event.currentTarget)}
      />
      <p id={`${id}-hint`} class="hint">
        {say('app.season.open.hint')}
      </p>
      <div role="status">{read && 'garden' in read && <Opened read={read} />}</div>
      {read && 'refusal' in read && (
        <p role="alert" class="alarm">
          {refusalSentence(read.refusal, read.file)}
        </p>
      )}
    </div>
  );
}

function show(garden: Garden, planting: GardenPlanting, file: string): void {
  openedGarden.value = { garden, file, plantingId: planting.id };
  go(askedOf(garden, planting), { to: 'season' });
}

function Opened({ read: { file, garden: asRead, changes } }: { read: Extract<Read, { garden: Garden }> }) {
  const { say } = voice.value;
  // what was kept since is in it
  const held = openedGarden.value?.file === file ? openedGarden.value : null;
  const garden = held?.garden ?? asRead;
  const { plantings } = garden;
  const shown = plantings.find(({ id }) => id === held?.plantingId);
  const hasPlace = shown && garden.places.some(({ id }) => id === shown.placeId);
  return (
    <>
      {plantings.length === 0 && <p>{say('app.season.open.none', { file })}</p>}
      {shown && <p>{say('app.season.open.opened', { name: shown.name, file })}</p>}
      {shown && !hasPlace && <p>{say('app.season.open.no-place', { name: shown.name })}</p>}
      {plantings.length > 1 && (
        <>
          <p>{say('app.season.open.which', { file })}</p>
          <ul>
            {plantings.map((planting) => (
              <li key={planting.id}>
                <button type="button" class="plain" onClick={() => show(garden, planting, file)}>
                  {planting.name}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      {changes.length > 0 && (
        <>
          <p>{say('app.season.open.changed')}</p>
          <ul>
            {changes.slice(0, mostTold).map(({ code, path, found }) => (
              <li key={`${code} ${path}`}>{say(`garden.change.${code}`, { path, found })}</li>
            ))}
            {changes.length > mostTold && (
              <li>{say('app.season.open.more', { count: changes.length - mostTold })}</li>
            )}
          </ul>
        </>
      )}
    </>
  );
}

function refusalSentence(refusal: GardenRefusal, file: string): string {
  const { say, number } = voice.value;
  switch (refusal.problem) {
    case 'too-big':
      return say('app.season.refused.too-big', {
        file,
        size: number(refusal.bytes / 1e6, 1),
        limit: number(mostBytes / 1e6),
      });
    case 'unreadable':
      return say('app.season.refused.unreadable', { file, reason: refusal.reason });
    case 'not-text':
      return say('app.season.refused.not-text', { file });
    case 'not-json':
      return say('app.season.refused.not-json', { file, reason: refusal.reason });
    case 'not-garden':
      return say('app.season.refused.not-garden', { file, found: refusal.found });
  }
}
