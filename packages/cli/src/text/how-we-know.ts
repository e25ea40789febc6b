import { howWeKnowLines } from '@neckfall/answers';
import type { Frame } from '../frame.ts';
import { wrap } from './wrap.ts';

/** The foot of every answer. */
export function howWeKnow({ place, options, assumed, sources, speaker }: Frame): string {
  const { say, all } = speaker;
  const { years, seed } = options;
  const lines = [
    ...howWeKnowLines({ place, years, seed, assumed }, speaker),
    say('how.sources', { sources: all(sources) }),
  ];
  return [say('how.title'), ...lines.map((line) => `  ${wrap(line, 2)}`)].join('\n');
}
