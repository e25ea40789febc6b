import { liftTold } from '@neckfall/answers';
import { liftAdvice } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { ToldLift } from '../documents/keep-document.ts';
import type { RawKeep } from './keep-asked.ts';
import { tended } from './tended.ts';

/** Whether to lift a planting of a garden, and what it is to dry; how it is grown is its own matter. */
export function liftOf(path: string, raw: RawKeep, speaker: Speaker): ToldLift {
  const { planting, today, years, seed, warmer, weather } = raw;
  const asked = Object.entries({ planting, today, years, seed, warmer, weather });
  const { crop, planting: kept } = tended(
    path,
    Object.fromEntries(asked.filter(([, value]) => value !== undefined)),
    speaker,
  );
  const advice = liftAdvice(crop);
  const { id = '', name = '' } = kept ?? {};
  const told = advice && liftTold(speaker, advice, crop);
  const sentences = told ? [told.headline, ...told.lines] : [speaker.say('keep-table.no-bulbs')];
  return { id, name, advice, sentences };
}
