import { useState } from 'preact/hooks';
import type { Asked } from '../address/address-form.ts';
import { address, hrefTo } from '../state/route.ts';
import { voice } from '../state/settings.ts';

/**
 * Copies the link of an answer with all of the plan that is `shown` by it, so that it opens to the same one on any day; but
 * not the day it was looked at, nor the planting and the bed it is kept as here, since what is kept here is kept nowhere else.
 */
export function ShareLink({ shown }: { shown: Partial<Asked> }) {
  const { say } = voice.value;
  const { page } = address.value;
  const link = new URL(hrefTo(page, { ...shown, today: null, planting: null, bed: null }), location.href)
    .href;
  const [told, tell] = useState<{ link: string; by: 'copied' | 'by-hand' } | null>(null);
  const copy = () =>
    (navigator.clipboard ? navigator.clipboard.writeText(link) : Promise.reject()).then(
      () => tell({ link, by: 'copied' }),
      () => tell({ link, by: 'by-hand' }),
    );
  // what was said of another answer is no longer true of this one
  const now = told?.link === link ? told.by : null;
  return (
    <>
      <button type="button" class="plain" onClick={copy}>
        {say('app.share')}
      </button>
      <span class="share-told" role="status">
        {now === 'copied' && say('app.share.done')}
        {now === 'by-hand' && (
          <label>
            {say('app.share.by-hand')}
            <input readonly value={link} onFocus={(event) => event.currentTarget.select()} />
          </label>
        )}
      </span>
    </>
  );
}
