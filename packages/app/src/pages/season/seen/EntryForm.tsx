import { isFeed, longestNote, type Observation } from '@neckfall/engine';
import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import { voice } from '../../../state/settings.ts';
import { today } from '../../../state/today.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { type Draft, entryOf, saysSomething } from './draft.ts';
import { NumberFields } from './NumberFields.tsx';
import { daysToNote } from './question.ts';
import { useDoubt } from './use-doubt.tsx';
import { WhenFields } from './When.tsx';

type Props = {
  ahead: SeasonAhead;
  draft: Draft;
  /** The entry that is changed; none where it is a new one. */
  before?: Observation;
  onDraft: (draft: Draft) => void;
  onNoted: (entry: Observation) => Promise<void>;
  /** Words of the button, and what stands beside it. */
  noteIt: string;
  children?: ComponentChildren;
};

/** Everything that may be noted of a day; what stays empty is not noted. */
export function EntryForm({ ahead, draft, before, onDraft, onNoted, noteIt, children }: Props) {
  const { say } = voice.value;
  const [isEmpty, setEmpty] = useState(false);
  const id = useId();
  const put = (changed: Partial<Draft>) => onDraft({ ...draft, ...changed });
  const doubt = useDoubt(ahead, onNoted);
  const fields = { draft, onDraft: put };
  const isFeedBad = draft.fedProduct !== '' && !isFeed(draft.fedProduct);
  return (
    <>
      <form
        class="form entry"
        onSubmit={(event) => {
          event.preventDefault();
          const entry = entryOf(draft, before);
          const says = saysSomething(entry);
          setEmpty(!says);
          if (says) doubt.offer(event.currentTarget, entry);
        }}
      >
        <WhenFields draft={draft} days={daysToNote(ahead.summary, today.value)} isOverPlants onDraft={put} />
        <NumberFields
          fields={[
            'leavesGreen',
            'neckMm',
            'bulbMm',
            'standCount',
            'floweringCount',
            'topsOverShare',
            'wateredLitres',
          ]}
          {...fields}
        />
        <div>
          <label for={`${id}-fed`}>{say('app.seen.fedProduct.label')}</label>
          <input
            id={`${id}-fed`}
            type="text"
            autocomplete="off"
            value={draft.fedProduct}
            aria-invalid={isFeedBad}
            aria-describedby={`${id}-fed-hint`}
            onChange={(event) => put({ fedProduct: event.currentTarget.value.trim() })}
          />
          <p
            id={`${id}-fed-hint`}
            class={isFeedBad ? 'hint alarm' : 'hint'}
            role={isFeedBad ? 'alert' : undefined}
          >
            {isFeedBad
              ? say('app.seen.fedProduct.bad', { value: draft.fedProduct })
              : say('app.seen.fedProduct.hint')}
          </p>
        </div>
        <NumberFields fields={['fedG', 'weighedKg', 'bulbCount']} {...fields} />
        <label>
          <input
            type="checkbox"
            checked={draft.lifted}
            onChange={(event) => put({ lifted: event.currentTarget.checked })}
          />
          {say('app.seen.lifted.label')}
        </label>
        <div class="wide">
          <label for={`${id}-note`}>{say('app.seen.note.label')}</label>
          <textarea
            id={`${id}-note`}
            rows={3}
            maxLength={longestNote}
            value={draft.note}
            onInput={(event) => put({ note: event.currentTarget.value })}
          />
        </div>
        <div class="wide row">
          <button type="submit" class="note-it">
            {noteIt}
          </button>
          {children}
        </div>
        <p role="status" class="wide">
          {isEmpty && say('app.seen.nothing')}
        </p>
      </form>
      {doubt.shown}
    </>
  );
}
