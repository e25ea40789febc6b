import type { Asked } from '../address/address-form.ts';
import { voice } from '../state/settings.ts';
import { NewWords } from './NewWords.tsx';
import { ShareLink } from './ShareLink.tsx';

type Props = {
  links: readonly { href: string; text: string }[];
  /** What the answer shows and the address does not say, for the link that is copied. */
  shown?: Partial<Asked>;
};

/** Where to go from an answer: the pages that say more, the link to take along, and what its words mean. */
export function AnswerLinks({ links, shown = {} }: Props) {
  return (
    <>
      <nav aria-label={voice.value.say('app.where.next')}>
        <ul class="onward">
          {links.map(({ href, text }) => (
            <li key={text}>
              <a href={href}>{text}</a>
            </li>
          ))}
          <li>
            <ShareLink shown={shown} />
          </li>
        </ul>
      </nav>
      <NewWords />
    </>
  );
}
