import { productName } from '@neckfall/answers';
import { organicFeeds, readFeedProduct } from '@neckfall/engine';
import { useId, useState } from 'preact/hooks';
import { voice } from '../../state/settings.ts';
import { feedBed, keepProduct } from './feed-ground.ts';

type Props = {
  /** As reckoned with, and as said; null: nothing was. */
  product: string;
  said: string | null;
};

/** What the grower feeds with: an organic source by its name, or the numbers of a bag. */
export function ProductField({ product, said }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const id = useId();
  const [bad, tellBad] = useState<string | null>(null);
  const bed = feedBed.value;
  // names in the reader's language, each known again as the one it stands for
  const names = organicFeeds.map((name) => ({ name, shown: productName(name, speaker) }));

  function take(text: string): void {
    const typed = text.trim();
    const named = names.find(({ shown }) => shown.toLowerCase() === typed.toLowerCase());
    const read = readFeedProduct(named?.name ?? typed);
    const isTaken = typed === '' || read !== null;
    tellBad(isTaken ? null : typed);
    if (isTaken) void keepProduct(read?.name ?? null);
  }

  return (
    <div class="feed-product">
      <label for={id}>{say('app.feed.product')}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        list={`${id}-names`}
        placeholder={productName(product, speaker)}
        value={bad ?? (said === null ? '' : productName(said, speaker))}
        aria-invalid={bad !== null}
        aria-describedby={`${id}-hint`}
        onChange={(event) => take(event.currentTarget.value)}
      />
      <datalist id={`${id}-names`}>
        {names.map(({ name, shown }) => (
          <option key={name} value={shown} />
        ))}
      </datalist>
      <p
        id={`${id}-hint`}
        class={bad === null ? 'hint' : 'hint alarm'}
        role={bad === null ? undefined : 'alert'}
      >
        {bad === null
          ? say('app.feed.product.hint', { bed: bed?.name ?? 'none' })
          : say('app.feed.product.bad', { value: bad })}
      </p>
    </div>
  );
}
