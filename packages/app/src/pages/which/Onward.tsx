import type { StartMethod } from '@neckfall/engine';
import { voice } from '../../state/settings.ts';

type Props = { onward: { when: string; season: string }; name: string; start: StartMethod };

/** Links to the pages that go on with an onion; read aloud, each says which onion it is for. */
export function Onward({ onward, name, start }: Props) {
  const { say } = voice.value;
  return (
    <>
      {(['when', 'season'] as const).map((page) => {
        const what = say(`app.which.${page}`);
        return (
          <a
            key={page}
            href={onward[page]}
            aria-label={say('app.which.for', { what, name, start: say(`start.${start}`) })}
          >
            {what}
          </a>
        );
      })}
    </>
  );
}
