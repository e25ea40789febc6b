import { coldBedSentence, dayOf, practiceAssumptions } from '@neckfall/answers';
import { coldBed, leafCheckpoint, medianSeasonDays, runPlan, spanParts } from '@neckfall/engine';
import type { Say, Speaker } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer.ts';
import { batch } from '../batch/batch.ts';
import { deliver } from '../deliver.ts';
import { seasonDocument } from '../documents/season-document.ts';
import { yearOf } from '../documents/values.ts';
import { type OpenFrame, openFrame } from '../frame.ts';
import { addBatchOption, addOutputOptions, addPlaceOptions, addPlanOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { readOnion } from '../options/onion-options.ts';
import {
  type PlaceOptions,
  type RawBatchOption,
  type RawOutputOptions,
  type RawPlaceOptions,
  readPlaceOptions,
} from '../options/place-options.ts';
import { type RawPlanOptions, readDays, readPractice } from '../options/plan-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { csv } from '../output/csv.ts';
import { refuse } from '../refusal.ts';
import { seasonText } from '../text/season-text.ts';
import { weatherWarnings } from '../weather-notes.ts';

export type RawSeason = RawPlaceOptions &
  RawOutputOptions &
  RawBatchOption &
  RawPlanOptions & { days?: boolean };

export function addSeason(root: Command, say: Say): void {
  const command = root.command('season').description(say('help.season'));
  addPlaceOptions(command, say);
  addPlanOptions(command, say, true);
  command.option('--days', say('help.days'));
  addBatchOption(command, say);
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'season Lyon --class long --start direct-seed --date 03-25'))
    .action((place: string | undefined, raw: RawSeason) =>
      raw.batch === undefined ? deliver(season(place, raw), raw) : batch('season', place, raw.batch, raw),
    );
}

/** What one crop will do, over many years of weather. */
function season(town: string | undefined, raw: RawSeason): Answer {
  const speaker = speakerFor(raw);
  if (raw.csv && !raw.days) throw refuse('no-table', { field: '--csv', expected: '--days' });
  return seasonAnswer(readPlaceOptions(town, raw), raw, speaker, openFrame);
}

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
  assumed.push(...onionAssumed, ...practiceAssumptions(summary.plan, speaker));
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
