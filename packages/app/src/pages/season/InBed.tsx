import { alliumSentence } from '@neckfall/answers';
import {
  alliumsBefore,
  emptyGarden,
  formatDay,
  type GardenBed,
  plantOutDayOf,
  type SeasonSummary,
} from '@neckfall/engine';
import { bed } from '../../state/bed.ts';
import { sharedWords } from '../../state/bed-words.ts';
import { gardenStanding } from '../../state/garden.ts';
import { planting } from '../../state/planting.ts';
import { voice } from '../../state/settings.ts';

/** The bed of the crop with what it says for it, and what it carried before. */
export function InBed({ summary: { plan } }: { summary: SeasonSummary }) {
  const current = bed.value;
  if (!current) return null;
  const plantOut = plantOutDayOf(plan);
  const before = alliumsBefore(gardenStanding.value?.garden ?? emptyGarden(), {
    id: planting.value?.id ?? '',
    bedId: current.id,
    startDate: formatDay(plan.startDay),
    plantOutDate: plantOut === null ? null : formatDay(plantOut),
  });
  const sentence = alliumSentence(before, voice.value);
  return (
    <>
      <p>{lies(current)}</p>
      {sentence !== null && (
        <p role="status" class={before?.finding === 'roots' ? 'hint' : 'alarm'}>
          {sentence}
        </p>
      )}
    </>
  );
}

function lies(current: GardenBed): string {
  const { say, all } = voice.value;
  const { name } = current;
  const list = sharedWords(current);
  return list.length === 0
    ? say('app.bed.lies', { name })
    : say('app.bed.lies-as', { name, list: all(list) });
}
