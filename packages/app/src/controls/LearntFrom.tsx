import {
  civilDate,
  emptyGarden,
  type Garden,
  type GardenPlanting,
  parseDay,
  plantingBefore,
  plantingLearntFrom,
} from '@neckfall/engine';
import { shown } from '@neckfall/words';
import { seenOf } from '../garden/seen.ts';
import { changeGarden, gardenStanding } from '../state/garden.ts';
import { planting } from '../state/planting.ts';
import { voice } from '../state/settings.ts';

type Props = {
  /** The planting as it would be kept, where it is not kept yet, with what keeps it: its id, null where that failed. */
  unkept?: { asKept: (garden: Garden) => GardenPlanting; keep: () => Promise<string | null> };
};

/** What an earlier season of the same onion here has told, taken up for this one, or left. */
export function LearntFrom({ unkept }: Props) {
  const { say } = voice.value;
  const garden = gardenStanding.value?.garden ?? emptyGarden();
  const current = planting.value ?? unkept?.asKept(garden);
  if (!current) return null;
  const from = plantingLearntFrom(garden, current);
  const offered = plantingBefore(garden, current);
  const year = (of: GardenPlanting) => yearSeen(garden, of);

  async function start(learntFrom: string | null): Promise<void> {
    const id = planting.value?.id ?? (await unkept?.keep());
    if (!id || !current) return;
    await changeGarden(
      { code: 'learnt', name: current.name },
      (now) => now && withLearnt(now, id, learntFrom),
    );
  }

  if (from) {
    return (
      <p class="learnt-from">
        {say('app.seen.learnt-from.is', { name: shown(from.name), year: year(from) ?? '' })}{' '}
        <button type="button" class="plain" onClick={() => void start(null)}>
          {say('app.seen.learnt-from.not')}
        </button>
      </p>
    );
  }
  const offeredYear = offered && year(offered);
  if (!offered || offeredYear === null) return null;
  return (
    <p class="learnt-from">
      <button type="button" onClick={() => void start(offered.id)}>
        {say('app.seen.learnt-from', { year: offeredYear })}
      </button>
    </p>
  );
}

/** The year in which it was looked at last; null where it never was. */
function yearSeen(garden: Garden, { id }: GardenPlanting): string | null {
  const [last] = seenOf(garden, id);
  const day = last === undefined ? null : parseDay(last.date);
  return day === null ? null : String(civilDate(day).year);
}

function withLearnt(garden: Garden, id: string, learntFrom: string | null): Garden {
  return {
    ...garden,
    plantings: garden.plantings.map((other) => (other.id === id ? { ...other, learntFrom } : other)),
  };
}
