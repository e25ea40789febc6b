import { practiceAssumptions, waterAssumptions, waterDayOf } from '@neckfall/answers';
import { waterOf } from '@neckfall/engine';
import { waterDocument } from '../documents/water-document.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { type RawWaterOptions, readWaterOptions } from '../options/water-options.ts';
import { csv } from '../output/csv.ts';
import { refuse } from '../refusal/refusal.ts';
import { waterText } from '../text/water-text.ts';
import type { Answer } from './answer.ts';
import { type RawTended, tended } from './tended.ts';

/** What a crop asks of water, of a planting or of a plan. */
export function waterAnswer(target: string | undefined, raw: RawTended & RawWaterOptions): Answer {
  const speaker = speakerFor(raw);
  if (raw.csv && !raw.days) throw refuse('no-table', { field: '--csv', expected: '--days' });
  const { ground, efficiency } = readWaterOptions(raw, speaker);
  const { crop, ...of } = tended(target, raw, speaker);
  // what is said now comes before what the bed says
  const watered = { ...crop, ground: { ...crop.ground, ...ground } };
  const water = waterOf(watered, { efficiency, days: raw.days === true });
  const { frame } = of;
  frame.assumed.push(...practiceAssumptions(crop.summary.plan, speaker), ...waterAssumptions(water, speaker));
  return {
    text: () => waterText(frame, watered, water),
    json: () => waterDocument(of, watered, water),
    csv: () => csv(water.days.map(waterDayOf)),
    warnings: frame.warnings,
  };
}
