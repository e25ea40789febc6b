import type { Speaker } from '@neckfall/words';
import { wrap } from '../text/wrap.ts';
import { version } from '../version.ts';

/** `neckfall --about`: what it rests on, and under which licences. */
export function about({ say }: Speaker): string {
  const sources = [
    say('about.chelsa'),
    say('about.cru'),
    say('about.geonames'),
    say('about.land'),
    say('about.sun'),
    say('about.water'),
    say('about.plant'),
  ];
  return [
    say('about.title', { version }),
    say('about.licence'),
    '',
    say('about.sources'),
    ...sources.map((line) => `  ${wrap(line, 2)}`),
    '',
    say('about.caution'),
    '',
  ].join('\n');
}
