import { isFeed } from '@neckfall/engine';
import { useId } from 'preact/hooks';
import { voice } from '../../../state/settings.ts';
import { type Draft, type Kind, kinds } from './draft.ts';
import { NumberFields } from './NumberFields.tsx';

type Props = { kind: Kind; draft: Draft; onDraft: (changed: Partial<Draft>) => void };

/** What is asked of one kind of thing seen or done. */
export function KindFields({ kind, draft, onDraft }: Props) {
  const { say } = voice.value;
  return (
    <>
      {kind === 'fed' && <FeedField draft={draft} onDraft={onDraft} />}
      {kind === 'lifted' && (
        <label>
          <input
            type="checkbox"
            checked={draft.lifted}
            onChange={(event) => onDraft({ lifted: event.currentTarget.checked })}
          />
          {say('app.seen.lifted.label')}
        </label>
      )}
      <NumberFields fields={kinds[kind]} draft={draft} onDraft={onDraft} />
    </>
  );
}

function FeedField({ draft: { fedProduct }, onDraft }: Omit<Props, 'kind'>) {
  const { say } = voice.value;
  const id = useId();
  const isBad = fedProduct !== '' && !isFeed(fedProduct);
  return (
    <div>
      <label for={id}>{say('app.seen.fedProduct.label')}</label>
      <input
        id={id}
        type="text"
        inputmode="text"
        autocomplete="off"
        value={fedProduct}
        aria-invalid={isBad}
        aria-describedby={`${id}-hint`}
        onChange={(event) => onDraft({ fedProduct: event.currentTarget.value.trim() })}
      />
      <p id={`${id}-hint`} class={isBad ? 'hint alarm' : 'hint'} role={isBad ? 'alert' : undefined}>
        {isBad ? say('app.seen.fedProduct.bad', { value: fedProduct }) : say('app.seen.fedProduct.hint')}
      </p>
    </div>
  );
}
