import { coldBedSentence, dayOf, practiceAssumptions } from '@neckfall/answers';
import {
  coldBed,
  leafCheckpoint,
  medianSeasonDays,
  type Plan,
  type PlanWithout,
  runPlan,
  spanParts,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { seasonDocument } from '../documents/season-document.ts';
import { yearOf } from '../documents/values.ts';
import type { Frame, OpenFrame } from '../frame/frame.ts';
import { measuredNotes, weatherWarnings } from '../frame/weather-notes.ts';
import { type AskedOnion, readOnion } from '../options/onion-options.ts';
import type {
  PlaceOptions,
  RawBatchOption,
  RawOutputOptions,
  RawPlaceOptions,
} from '../options/place-options.ts';
import { type RawPlanOptions, readDays, readPractice } from '../options/plan-options.ts';
import { csv } from '../output/csv.ts';
import { seasonText } from '../text/season-text.ts';
import type { Answer } from './answer.ts';
import type { SeenSeason } from './seen-season.ts';

export type RawSeason = RawPlaceOptions &
  RawOutputOptions &
  RawBatchOption &
  RawPlanOptions & { days?: boolean };

/** A season from its options, be they of a command line or of a row of a batch. */
export function seasonAnswer(
  options: PlaceOptions,
  raw: RawSeason,
  speaker: Speaker,
  open: OpenFrame,
): Answer {
  const onion = readOnion(raw, speaker);
  const practice = readPractice(raw, speaker);
  const days = readDays(raw, options);
  const frame = open(options, speaker);
  const grown = { ...practice, ...days, sunHours: options.sunHours };
  const { plan, assumed } = planOf(frame, onion, grown);
  return tellSeason(frame, onion, plan, assumed, raw.days === true, null);
}

/** A plan with the plant that an onion is here, and what was assumed of that. */
export function planOf(
  { site }: Pick<Frame, 'site'>,
  onion: AskedOnion,
  grown: PlanWithout<'type' | 'traits'>,
): { plan: Plan; assumed: string[] } {
  const { start, startDay } = grown;
  const { type, traits, assumed } = onion.plantAt(site, yearOf(startDay), { start, startDay });
  return { plan: { ...grown, type, traits }, assumed };
}

/** @param seen what was seen of the crop, which the frame's site has learnt from; null where nothing can have been */
export function tellSeason(
  frame: Frame,
  onion: AskedOnion,
  plan: Plan,
  onionAssumed: readonly string[],
  withDays: boolean,
  seen: SeenSeason | null,
): Answer {
  const { site, assumed, warnings, speaker } = frame;
  warnings.push(...onion.warnings);
  warnings.push(...weatherWarnings(frame, plan.startDay, plan.startDay));
  const cold = coldBed(site, plan.start, plan.startDay);
  if (cold) warnings.push(coldBedSentence(cold, plan.startDay, speaker));
  const summary = runPlan(site, plan);
  const measured = measuredNotes(frame, plan.startDay, summary.neckFall.days?.p50 ?? null);
  warnings.push(...measured.warnings);
  assumed.push(...measured.assumed, ...onionAssumed, ...practiceAssumptions(summary.plan, speaker));
  const rows = withDays ? medianSeasonDays(site, plan) : null;
  const checks = () => ({
    spans: spanParts(site, summary),
    leafCheckpoint: leafCheckpoint(site, summary),
  });
  return {
    text: () => seasonText(frame, summary, onion.name, rows, checks(), seen?.sentences(summary) ?? []),
    json: () => ({
      ...seasonDocument(frame, summary, onion.name, rows, checks()),
      ...seen?.document(summary),
    }),
    csv: () => csv((rows ?? []).map(dayOf)),
    warnings,
  };
}
