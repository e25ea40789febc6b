import { coldBedSentence, dayOf, practiceAssumptions } from '@neckfall/answers';
import { coldBed, leafCheckpoint, medianSeasonDays, runPlan, spanParts } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { seasonDocument } from '../documents/season-document.ts';
import { yearOf } from '../documents/values.ts';
import type { OpenFrame } from '../frame/frame.ts';
import { measuredNotes, weatherWarnings } from '../frame/weather-notes.ts';
import { readOnion } from '../options/onion-options.ts';
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
  const { site, assumed, warnings } = frame;
  const {
    type,
    traits,
    assumed: onionAssumed,
  } = onion.plantAt(site, yearOf(days.startDay), {
    start: practice.start,
    startDay: days.startDay,
  });
  const plan = { ...practice, ...days, sunHours: options.sunHours, type, traits };
  warnings.push(...onion.warnings);
  warnings.push(...weatherWarnings(frame, plan.startDay, plan.startDay));
  const cold = coldBed(site, plan.start, plan.startDay);
  if (cold) warnings.push(coldBedSentence(cold, plan.startDay, speaker));
  const summary = runPlan(site, plan);
  const measured = measuredNotes(frame, plan.startDay, summary.neckFall.days?.p50 ?? null);
  warnings.push(...measured.warnings);
  assumed.push(...measured.assumed, ...onionAssumed, ...practiceAssumptions(summary.plan, speaker));
  const rows = raw.days ? medianSeasonDays(site, plan) : null;
  const checks = () => ({
    spans: spanParts(site, summary),
    leafCheckpoint: leafCheckpoint(site, summary),
  });
  return {
    text: () => seasonText(frame, summary, onion.name, rows, checks()),
    json: () => seasonDocument(frame, summary, onion.name, rows, checks()),
    csv: () => csv((rows ?? []).map(dayOf)),
    warnings,
  };
}
