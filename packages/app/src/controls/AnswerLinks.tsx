import { voice } from '../state/settings.ts';
import { NewWords } from './NewWords.tsx';

type Props = {
  /** The next step first; at most two more. */
  links: readonly { href: string; text: string }[];
};

/** Where to go from an answer, the next step as a button; and what its words mean. */
export function AnswerLinks({ links }: Props) {
  return (
    <>
      <nav aria-label={voice.value.say('app.where.next')}>
        <ul class="onward">
          {links.map(({ href, text }, at) => (
            <li key={text}>
              <a href={href} class={at === 0 ? 'next' : ''}>
                {text}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <NewWords />
    </>
  );
}
