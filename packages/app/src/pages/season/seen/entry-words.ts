import type { Observation } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { isOverPlants } from './draft.ts';
import { dayOf } from './question.ts';

/** An entry in a sentence, its note apart. */
export function entryWords(entry: Observation, speaker: Speaker): string {
  const { say, all, dayWithYear } = speaker;
  const parts = [...plantWords(entry, speaker), ...workWords(entry, speaker), ...bulbWords(entry, speaker)];
  return say('app.seen.entry', {
    date: dayWithYear(dayOf(entry)),
    plants: isOverPlants(entry) ? (entry.lookedAt ?? 1) : 0,
    what:
      parts.length > 0
        ? all(parts)
        : say(entry.note === undefined ? 'app.seen.is.photo' : 'app.seen.is.note'),
  });
}

function plantWords(entry: Observation, { say, number, quantity, plants }: Speaker): string[] {
  const { leavesGreen, neckMm, bulbMm, standCount, floweringCount, topsOverShare } = entry;
  return [
    ...(leavesGreen === undefined
      ? []
      : [say('app.seen.is.leavesGreen', { count: leavesGreen, value: number(leavesGreen, 1) })]),
    ...(neckMm === undefined ? [] : [say('app.seen.is.neckMm', { value: quantity('bulbLength', neckMm) })]),
    ...(bulbMm === undefined ? [] : [say('app.seen.is.bulbMm', { value: quantity('bulbLength', bulbMm) })]),
    ...(standCount === undefined
      ? []
      : [say('app.seen.is.standCount', { count: standCount, value: number(standCount) })]),
    ...(floweringCount === undefined
      ? []
      : [say('app.seen.is.floweringCount', { count: floweringCount, value: number(floweringCount) })]),
    ...(topsOverShare === undefined
      ? []
      : [say('app.seen.is.topsOverShare', { value: plants(topsOverShare) })]),
  ];
}

function workWords(entry: Observation, { say, quantity }: Speaker): string[] {
  const { wateredLitres, fedProduct, fedG, lifted } = entry;
  const isFed = fedProduct !== undefined || fedG !== undefined;
  return [
    ...(wateredLitres === undefined
      ? []
      : [say('app.seen.is.wateredLitres', { value: quantity('water', wateredLitres) })]),
    ...(isFed
      ? [
          say('app.seen.is.fed', {
            product: fedProduct ?? 'none',
            amount: fedG === undefined ? 'none' : quantity('bulbMass', fedG),
          }),
        ]
      : []),
    ...(lifted ? [say('app.seen.is.lifted')] : []),
  ];
}

function bulbWords(entry: Observation, { say, number, quantity }: Speaker): string[] {
  const { weighedKg, bulbCount, thickNeckCount: thick } = entry;
  const counts = ['soundCount', 'sproutedCount', 'rottenCount'] as const;
  return [
    ...(weighedKg === undefined
      ? []
      : [say('app.seen.is.weighedKg', { count: bulbCount ?? 0, value: quantity('crop', weighedKg) })]),
    ...(weighedKg !== undefined || bulbCount === undefined
      ? []
      : [say('app.seen.is.bulbCount', { count: bulbCount, value: number(bulbCount) })]),
    ...(thick === undefined
      ? []
      : [say('app.seen.is.thickNeckCount', { count: thick, value: number(thick) })]),
    ...counts.flatMap((field) => {
      const count = entry[field];
      return count === undefined ? [] : [say(`app.seen.is.${field}`, { value: number(count) })];
    }),
  ];
}
