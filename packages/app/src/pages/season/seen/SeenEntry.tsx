import { useEffect, useRef, useState } from 'preact/hooks';
import { lastLookedAt } from '../../../garden/seen.ts';
import { seen } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import { today } from '../../../state/today.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { Told } from '../Told.tsx';
import { told } from '../told.ts';
import { begun } from './begun.ts';
import { type Draft, emptyDraft } from './draft.ts';
import { EntryForm } from './EntryForm.tsx';
import { noteSeen } from './note.ts';
import { QuickEntry } from './QuickEntry.tsx';
import { isUnderWay, questionOn } from './question.ts';
import '../../../look/seen.css';

/** What is seen of the crop, noted in two taps; and under it all else that can be seen or done. */
export function SeenEntry({ ahead }: { ahead: SeasonAhead }) {
  const { say } = voice.value;
  const [draft, setDraft] = useState<Draft | null>(null);
  const [isOpen, open] = useState(false);
  // what is begun elsewhere on the page begins with a form of its own
  const [beginnings, begin] = useState(0);
  const place = useRef<HTMLDivElement>(null);
  // with the first thing noted of a crop the form moves up: go on from there
  useEffect(() => {
    if (told.value?.at === 'entry' && document.activeElement === document.body) {
      place.current?.querySelector<HTMLElement>('.note-it')?.focus();
    }
  }, [told.value]);
  useEffect(() => {
    if (begun.value === null) return;
    setDraft(begun.value);
    begin((nth) => nth + 1);
    open(true);
    begun.value = null;
  }, [begun.value]);
  useEffect(() => {
    if (beginnings > 0) place.current?.querySelector<HTMLElement>('.entry :is(input, select)')?.focus();
  }, [beginnings]);
  if (!isUnderWay(ahead.summary, today.value) && draft === null) return null;
  const question = questionOn(ahead, seen.value);
  return (
    <div ref={place} class="noting">
      {question !== null && (
        <QuickEntry
          key={question}
          question={question}
          ahead={ahead}
          onNoted={(entry) => noteSeen(entry, ahead)}
        />
      )}
      <Told at="entry" />
      <details class="noting-more" open={isOpen} onToggle={(event) => open(event.currentTarget.open)}>
        <summary>{say('app.seen.more')}</summary>
        {isOpen && (
          <EntryForm
            key={beginnings}
            ahead={ahead}
            draft={draft ?? emptyDraft(today.value, lastLookedAt(seen.value))}
            onDraft={setDraft}
            onNoted={async (entry, photo) => {
              if (!(await noteSeen(entry, ahead, photo))) return;
              setDraft(null);
              open(false);
              // its own button goes with it
              place.current?.querySelector<HTMLElement>('.noting-more > summary')?.focus();
            }}
            noteIt={say('app.seen.note-it')}
          />
        )}
      </details>
    </div>
  );
}
