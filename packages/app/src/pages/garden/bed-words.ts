import type { Garden, GardenBed } from '@neckfall/engine';
import { sharedWords } from '../../state/bed-words.ts';
import { voice } from '../../state/settings.ts';

/** What is known of a bed, and what lies in it. */
export function bedInWords(bed: GardenBed, { plantings }: Pick<Garden, 'plantings'>): string {
  const { say, all } = voice.value;
  const inIt = plantings
    .filter(({ bedId }) => bedId === bed.id)
    .map(({ name }) => say('app.bed.named', { name }));
  const known = knownOf(bed);
  return [
    ...(known.length > 0 ? [say('app.bed.known', { list: all(known) })] : []),
    ...(inIt.length > 0 ? [say('app.bed.in-it', { list: all(inIt) })] : []),
  ].join(' ');
}

function knownOf(bed: GardenBed): string[] {
  const { say, quantity } = voice.value;
  const { lengthM, widthM, alliumYears, whiteRot } = bed;
  return [
    ...(lengthM !== null && widthM !== null
      ? [
          say('app.bed.size', {
            length: quantity('rowLength', lengthM),
            width: quantity('rowLength', widthM),
          }),
        ]
      : []),
    ...sharedWords(bed),
    ...(alliumYears.length === 0
      ? []
      : [say('app.bed.alliums-last', { year: String(Math.max(...alliumYears)) })]),
    ...(whiteRot === true ? [say('app.bed.rotten')] : []),
  ];
}
