import { type LeafCheckpoint, plantingOut, type SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { leafCheckSentence } from '../sentences/index.ts';

/** How to know that it is time, by what can be seen and felt of the ground and the plants. */
export function handoutSigns(
  { plan, neckFall }: SeasonSummary,
  leafCheckpoint: LeafCheckpoint | null,
  speaker: Speaker,
): string[] {
  const { say, day, number, quantity } = speaker;
  const ground =
    plan.start === 'raised-seedlings'
      ? say('handout.sign.out', {
          leaves: number(plantingOut.leaves, 1),
          weeks: plantingOut.latestWeeks,
          temperature: quantity('temperature', plantingOut.bedC),
        })
      : say('handout.sign.ground', { from: plan.start === 'direct-seed' ? 'seed' : 'plants' });
  const isRipening = neckFall.days !== null && neckFall.share >= 0.5;
  return [
    ground,
    ...(leafCheckpoint ? [leafCheckSentence(leafCheckpoint, speaker)] : []),
    isRipening ? say('handout.sign.ripe', { date: day(neckFall.days!.p50) }) : say('handout.sign.unripe'),
    say('handout.sign.dry'),
  ];
}
