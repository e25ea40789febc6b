import { type HandoutFacts, type HandoutOwn, handoutFacts, handoutOf } from '@neckfall/answers';
import { surveyOf } from '@neckfall/engine';
import { handoutYear, type Paper } from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import type { Frame, OpenFrame } from '../frame/frame.ts';
import { weatherWarnings } from '../frame/weather-notes.ts';
import type { RawSheet } from '../options/handout-options.ts';
import type {
  PlaceOptions,
  RawBatchOption,
  RawOutputOptions,
  RawPlaceOptions,
} from '../options/place-options.ts';
import type { SheetAsked } from '../print/write-sheet.ts';

export type RawHandout = RawPlaceOptions & RawOutputOptions & RawBatchOption & RawSheet & { as?: string };

const msPerDay = 86_400_000;

/** A sheet for a place. @param label what the place is called; null: as everywhere */
export function handoutAnswer(
  options: PlaceOptions,
  said: { own: HandoutOwn; paper: Paper; label: string | null },
  speaker: Speaker,
  open: OpenFrame,
): { frame: Frame; facts: HandoutFacts; sheet: SheetAsked } {
  const frame = open(options, speaker);
  const { site, place, assumed } = frame;
  const { sunHours, today } = frame.options;
  frame.warnings.push(...weatherWarnings(frame, today, today + 364));
  const facts = handoutFacts(site, surveyOf(site, today, { sunHours }), today);
  const label = said.label ?? frame.label;
  return {
    frame,
    facts,
    sheet: {
      handout: handoutOf(facts, { place, label, assumed }, said.own, speaker),
      year: handoutYear(facts, speaker),
      paper: said.paper,
      dayMs: today * msPerDay,
    },
  };
}
