import type { ComponentChildren } from 'preact';
import { voice } from '../state/settings.ts';
import { NewWords } from './NewWords.tsx';

type Props = {
  /** The next step first; at most two more. */
  links: readonly { href: string; text: string }[];
  /** What else can be done from here. */
  children?: ComponentChildren;
};

/** Where to go from an answer, the next step as a button; and what its words mean. */
export function AnswerLinks({ links, children = null }: Props) {
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
      {children}
      <NewWords />
    </>
  );
}
