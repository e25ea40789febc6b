import { practiceAssumptions, storeName } from '@neckfall/answers';
import { classOfType, runPlan, symptomTimes, type WhyAsked } from '@neckfall/engine';
import type { Frame } from '../frame/frame.ts';
import { measuredNotes, weatherWarnings } from '../frame/weather-notes.ts';
import type { Stored } from '../options/why-options.ts';

/** What was not said of a crop and taken as is usual. `season`: which year's it was. */
export type Unsaid = { onion: boolean; start: boolean; day: boolean; season: boolean };

/** Puts into the frame what was taken for granted of a crop, and what is doubtful about its weather. */
export function noteGrounds(
  frame: Frame,
  asked: WhyAsked,
  { store, isSaid }: Stored,
  unsaid: Unsaid,
  onionAssumed: readonly string[],
): void {
  const { site, assumed, warnings, speaker } = frame;
  const { say, dayWithYear } = speaker;
  const { plan, symptoms, noticed } = asked;
  const date = dayWithYear(plan.startDay);
  const inStore = symptoms.some((symptom) => symptomTimes[symptom] === 'store');
  if (frame.options.weather) {
    const measured = measuredNotes(frame, plan.startDay, runPlan(site, plan).neckFall.days?.p50 ?? null);
    warnings.push(...weatherWarnings(frame, plan.startDay, plan.startDay), ...measured.warnings);
    assumed.push(...measured.assumed);
  }
  assumed.push(
    ...(unsaid.onion ? [say('why-assumed.onion', { class: say(`class.${classOfType[plan.type]}`) })] : []),
    ...(unsaid.start ? [say('why-assumed.start', { start: say(`start.${plan.start}`) })] : []),
    ...(unsaid.day ? [say('why-assumed.date', { date })] : []),
    ...(unsaid.season ? [say('why-assumed.season', { date })] : []),
    ...onionAssumed,
    ...practiceAssumptions(plan, speaker),
    say('why-assumed.unsaid'),
    ...(inStore && !isSaid ? [say('why-assumed.store', { store: storeName(store, speaker) })] : []),
    ...(inStore && noticed === null ? [say('why-assumed.noticed')] : []),
  );
}
