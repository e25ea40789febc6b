import { dayLengthClasses } from '../plant/index.ts';
import { restoreBed } from './bed.ts';
import {
  emptyGarden,
  type Garden,
  type GardenPlace,
  gardenRanges,
  gardenSchemaName,
  type OwnCultivar,
} from './garden.ts';
import { restoreWeather } from './garden-weather.ts';
import { restoreJobMark } from './job-mark.ts';
import { restoreKitchen } from './kitchen.ts';
import { jsonStart } from './nesting.ts';
import { restoreObservation } from './observation.ts';
import { restorePlanting } from './planting.ts';
import {
  emptied,
  type GardenChange,
  isNumberIn,
  isRecord,
  nameAndId,
  numberOrNull,
  type RestoreEntry,
  type Tell,
  type Unknown,
  wordOrNull,
} from './restoring.ts';

type MakeId = (at: number) => string;

/** A garden that was read, with what had to be changed for that. */
export type RestoredGarden = { garden: Garden; changes: GardenChange[] };

/**
 * A complete garden from anything that was read, old or damaged. Nothing is refused: what cannot be used is left
 * empty or out, and told; fields that this version does not know stay as they are.
 *
 * @param makeId gives an entry without an id of its own one that no other has; else it is told by its place in the list
 */
export function restoreGarden(found: unknown, makeId?: MakeId): RestoredGarden {
  const changes: GardenChange[] = [];
  const tell = (code: GardenChange['code'], path: string, value: unknown) => {
    changes.push({ code, path, found: shown(value) });
  };
  if (!isRecord(found)) {
    tell('not-a-garden', '', found);
    return { garden: emptyGarden(), changes };
  }
  if (found.schema !== gardenSchemaName)
    tell(isNewer(found.schema) ? 'newer' : 'schema', 'schema', found.schema);
  const garden: Garden = {
    ...found,
    schema: gardenSchemaName,
    places: entries(found.places, 'places', tell, restorePlace, makeId),
    beds: entries(found.beds, 'beds', tell, restoreBed, makeId),
    cultivars: entries(found.cultivars, 'cultivars', tell, restoreCultivar, makeId),
    plantings: entries(found.plantings, 'plantings', tell, restorePlanting, makeId),
    observations: entries(found.observations, 'observations', tell, restoreObservation, makeId),
    jobs: entries(found.jobs, 'jobs', tell, restoreJobMark, makeId),
    weather: entries(found.weather, 'weather', tell, restoreWeather, makeId),
    kitchen: restoreKitchen(found.kitchen, tell),
  };
  return { garden, changes };
}

function entries<Entry extends { id: string }>(
  list: unknown,
  path: string,
  tell: Tell,
  restore: RestoreEntry<Entry>,
  makeId: MakeId | undefined,
): Entry[] {
  if (list === undefined) return [];
  if (!Array.isArray(list)) {
    tell('list-replaced', path, list);
    return [];
  }
  const ids = new Set<string>();
  const newId = makeId ?? idsBeside(list, path);
  return list.flatMap((entry: unknown, at) => {
    const here = `${path}[${at}]`;
    const restored = isRecord(entry) ? restore(entry, here, tell, at) : null;
    if (!restored) {
      tell('entry-dropped', here, entry);
      return [];
    }
    if (restored.id === '' || ids.has(restored.id)) {
      tell('id-given', `${here}.id`, (entry as Unknown).id);
      restored.id = newId(at);
    }
    ids.add(restored.id);
    return [restored];
  });
}

/** Ids by the place in the list, or the next that no entry has of its own. */
function idsBeside(list: readonly unknown[], path: string): MakeId {
  const taken = new Set(list.map((entry) => (isRecord(entry) ? entry.id : null)));
  let number = 0;
  return (at) => {
    number = Math.max(number, at);
    do number++;
    while (taken.has(`${path}-${number}`));
    return `${path}-${number}`;
  };
}

/** A place without a point on the globe is no place. */
function restorePlace(found: Unknown, path: string, tell: Tell, at: number): GardenPlace | null {
  const inRange = (field: 'latitudeDeg' | 'longitudeDeg') => isNumberIn(found[field], gardenRanges[field]);
  if (!inRange('latitudeDeg') || !inRange('longitudeDeg')) return null;
  return {
    ...found,
    ...nameAndId(found, path, tell, at),
    latitudeDeg: found.latitudeDeg as number,
    longitudeDeg: found.longitudeDeg as number,
    elevationM: numberOrNull(found, 'elevationM', path, tell),
    sunHours: numberOrNull(found, 'sunHours', path, tell),
    frostHollow:
      typeof found.frostHollow === 'boolean' ? found.frostHollow : emptied(found, 'frostHollow', path, tell),
  };
}

function restoreCultivar(found: Unknown, path: string, tell: Tell, at: number): OwnCultivar {
  return {
    ...found,
    ...nameAndId(found, path, tell, at),
    class: wordOrNull(found, 'class', dayLengthClasses, path, tell),
    packetHours: numberOrNull(found, 'packetHours', path, tell),
    packetDays: numberOrNull(found, 'packetDays', path, tell),
    keepsMonths: monthsOrNull(found, path, tell),
  };
}

function monthsOrNull(found: Unknown, path: string, tell: Tell): readonly [number, number] | null {
  const value = found.keepsMonths;
  if (Array.isArray(value) && value.length === 2) {
    const [from, to] = value;
    const isMonths = (month: unknown) => isNumberIn(month, gardenRanges.keepsMonths);
    if (isMonths(from) && isMonths(to) && from <= to) return [from, to];
  }
  return emptied(found, 'keepsMonths', path, tell);
}

function isNewer(schema: unknown): boolean {
  return typeof schema === 'string' && Number(/^neckfall\/garden@(\d+)$/.exec(schema)?.[1]) > 1;
}

const longestShown = 40;

function shown(value: unknown): string {
  if (value === undefined) return '';
  const text = typeof value === 'string' ? value : jsonStart(value, longestShown + 1);
  return text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
}
