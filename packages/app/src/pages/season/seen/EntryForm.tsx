import { longestNote, type Observation } from '@neckfall/engine';
import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import { ChoiceField } from '../../../controls/ChoiceField.tsx';
import { voice } from '../../../state/settings.ts';
import { today } from '../../../state/today.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { type Draft, entryOf, isOfKind, type Kind, kindNames, saysSomething } from './draft.ts';
import { KindFields } from './KindFields.tsx';
import { PhotoField } from './PhotoField.tsx';
import { daysToNote } from './question.ts';
import { useDoubt } from './use-doubt.tsx';
import { WhenFields } from './When.tsx';

type Props = {
  ahead: SeasonAhead;
  draft: Draft;
  /** The entry that is changed; none where it is a new one. */
  before?: Observation;
  onDraft: (draft: Draft) => void;
  onNoted: (entry: Observation, photo: File | null) => Promise<void>;
  /** Words of the button, and what stands beside it. */
  noteIt: string;
  children?: ComponentChildren;
};

/** Everything that may be noted of a day; what stays empty is not noted. */
export function EntryForm({ ahead, draft, before, onDraft, onNoted, noteIt, children }: Props) {
  const { say } = voice.value;
  const [isEmpty, setEmpty] = useState(false);
  const [kind, choose] = useState<Kind>(() => kindNames.find((one) => isOfKind(draft, one)) ?? 'watered');
  const id = useId();
  const put = (changed: Partial<Draft>) => onDraft({ ...draft, ...changed });
  const [photo, setPhoto] = useState<File | null>(null);
  const doubt = useDoubt(ahead, (entry) => onNoted(entry, photo));
  return (
    <>
      <form
        class="form entry"
        onSubmit={(event) => {
          event.preventDefault();
          const entry = entryOf(draft, before);
          const says = saysSomething(entry) || photo !== null;
          setEmpty(!says);
          if (says) doubt.offer(event.currentTarget, entry);
        }}
      >
        <ChoiceField<Kind>
          label={say('app.seen.kind')}
          value={kind}
          options={kindNames.map((value) => ({ value, label: say(`app.seen.kind.${value}`) }))}
          onValue={choose}
        />
        {kindNames
          .filter((other) => other === kind || isOfKind(draft, other))
          .map((shown) => (
            <KindFields key={shown} kind={shown} draft={draft} onDraft={put} />
          ))}
        <WhenFields
          draft={draft}
          days={daysToNote(ahead.summary, today.value)}
          isOverPlants={kind === 'measured' || isOfKind(draft, 'measured')}
          onDraft={put}
        />
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
        <PhotoField onPhoto={setPhoto} />
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
