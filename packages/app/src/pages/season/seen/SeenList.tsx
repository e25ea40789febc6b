import type { Observation } from '@neckfall/engine';
import { shown } from '@neckfall/words';
import { useEffect, useRef, useState } from 'preact/hooks';
import { lastLookedAt } from '../../../garden/seen.ts';
import { followPhotos, photographed } from '../../../state/photos.ts';
import { seen } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { Told } from '../Told.tsx';
import { told } from '../told.ts';
import { type Draft, draftOf } from './draft.ts';
import { EntryForm } from './EntryForm.tsx';
import { entryWords } from './entry-words.ts';
import { changeSeen, removeSeen } from './note.ts';
import { Photo } from './Photo.tsx';

/** More are folded away. */
const mostShown = 6;

/** What was seen of the crop and done to it, the newest first. */
export function SeenList({ ahead }: { ahead: SeasonAhead }) {
  const { say } = voice.value;
  const heading = useRef<HTMLHeadingElement>(null);
  const entries = seen.value;
  const isEmpty = entries.length === 0;
  // another tab that changed what was seen may have kept photos of it
  useEffect(() => {
    if (!isEmpty) followPhotos();
  }, [entries]);
  const list = (some: readonly Observation[]) => (
    <ul>
      {some.map((entry) => (
        <Entry key={entry.id} entry={entry} ahead={ahead} onRemoved={() => heading.current?.focus()} />
      ))}
    </ul>
  );
  return (
    <section class="saw" aria-labelledby="saw" hidden={isEmpty && told.value?.at !== 'list'}>
      <h2 id="saw" ref={heading} tabIndex={-1}>
        {say('app.seen.list')}
      </h2>
      <Told at="list" />
      {list(entries.slice(0, mostShown))}
      {entries.length > mostShown && (
        <details>
          <summary>{say('app.seen.list.more', { count: entries.length - mostShown })}</summary>
          {list(entries.slice(mostShown))}
        </details>
      )}
    </section>
  );
}

type EntryProps = { entry: Observation; ahead: SeasonAhead; onRemoved: () => void };

function Entry({ entry, ahead, onRemoved }: EntryProps) {
  const speaker = voice.value;
  const { say } = speaker;
  const [draft, setDraft] = useState<Draft | null>(null);
  const changeButton = useRef<HTMLButtonElement>(null);
  const words = entryWords(entry, speaker);
  const leave = () => {
    setDraft(null);
    changeButton.current?.focus();
  };
  return (
    <li>
      <span>{words}</span> {entry.note !== undefined && <q>{shown(entry.note)}</q>}{' '}
      {photographed.value.has(entry.id) && <Photo of={entry.id} words={words} />}
      <span class="entry-ways">
        <button
          ref={changeButton}
          type="button"
          class="plain"
          aria-label={say('app.seen.change-of', { entry: words })}
          aria-expanded={draft !== null}
          onClick={() => setDraft(draft ? null : draftOf(entry, lastLookedAt(seen.value)))}
        >
          {say('app.seen.change')}
        </button>
        <button
          type="button"
          class="plain"
          aria-label={say('app.seen.remove-of', { entry: words })}
          onClick={async () => {
            if (await removeSeen(entry)) onRemoved();
          }}
        >
          {say('app.seen.remove')}
        </button>
      </span>
      {draft && (
        <EntryForm
          ahead={ahead}
          draft={draft}
          before={entry}
          onDraft={setDraft}
          onNoted={async (changed, photo) => {
            if (await changeSeen(changed, photo)) leave();
          }}
          noteIt={say('app.seen.keep-change')}
        >
          <button type="button" onClick={leave}>
            {say('app.seen.leave-it')}
          </button>
        </EntryForm>
      )}
    </li>
  );
}
