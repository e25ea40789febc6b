import type { Asked } from '../address/address-form.ts';
import { ShareLink } from './ShareLink.tsx';

/** What ends an answer: the link to take along. `shown`: what the answer shows and the address does not say. */
export function AnswerFoot({ shown = {} }: { shown?: Partial<Asked> }) {
  return (
    <p class="answer-foot">
      <ShareLink shown={shown} />
    </p>
  );
}
