import { howWeKnowLines } from '@neckfall/answers';
import { type Plan, whatMovesIt } from '@neckfall/engine';
import type { Frame } from '../frame/frame.ts';
import { wrap } from './wrap.ts';

/**
 * The foot of every answer.
 *
 * @param plan the crop it is about; null where it is about many
 * @param span how far its dates and sizes lie apart, in a sentence
 */
export function howWeKnow(
  { place, site, options, assumed, sources, speaker }: Frame,
  plan: Plan | null,
  span: string | null,
): string {
  const { say, all } = speaker;
  const { years, seed } = options;
  const lines = [
    ...howWeKnowLines({ place, years, seed, assumed, span, pulls: plan && whatMovesIt(site, plan) }, speaker),
    say('how.sources', { sources: all(sources) }),
  ];
  return [say('how.title'), ...lines.map((line) => `  ${wrap(line, 2)}`)].join('\n');
}
