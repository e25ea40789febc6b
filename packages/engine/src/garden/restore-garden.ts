import { dayLengthClasses } from '../plant/index.ts';
import {
  emptyGarden,
  type Garden,
  type GardenPlace,
  gardenRanges,
  gardenSchemaName,
  type OwnCultivar,
} from './garden.ts';
import { restorePlanting } from './planting.ts';
import {
  emptied,
  type GardenChange,
  isNumberIn,
  nameAndId,
  numberOrNull,
  type RestoreEntry,
  type Tell,
  type Unknown,
  wordOrNull,
} from './restoring.ts';

export type RestoredGarden = { garden: Garden; changes: GardenChange[] };

/**
 * A complete garden from anything that was read, old or damaged. Nothing is refused: what cannot be used is left
 * empty or out, and told; fields that this version does not know stay as they are.
 */
export function restoreGarden(found: unknown): RestoredGarden {
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
    places: entries(found.places, 'places', tell, restorePlace),
    cultivars: entries(found.cultivars, 'cultivars', tell, restoreCultivar),
    plantings: entries(found.plantings, 'plantings', tell, restorePlanting),
  };
  return { garden, changes };
}

function entries<Entry extends { id: string }>(
  list: unknown,
  path: string,
  tell: Tell,
  restore: RestoreEntry<Entry>,
): Entry[] {
  if (list === undefined) return [];
  if (!Array.isArray(list)) {
    tell('list-replaced', path, list);
    return [];
  }
  const ids = new Set<string>();
  let lastGiven = 0;
  return list.flatMap((entry: unknown, at) => {
    const here = `${path}[${at}]`;
    const restored = isRecord(entry) ? restore(entry, here, tell, at) : null;
    if (!restored) {
      tell('entry-dropped', here, entry);
      return [];
    }
    if (restored.id === '' || ids.has(restored.id)) {
      tell('id-given', `${here}.id`, (entry as Unknown).id);
      // numbers passed over once are taken for good
      lastGiven = freeNumber(path, Math.max(at, lastGiven) + 1, ids);
      restored.id = `${path}-${lastGiven}`;
    }
    ids.add(restored.id);
    return [restored];
  });
}

function freeNumber(path: string, from: number, taken: ReadonlySet<string>): number {
  let number = from;
  while (taken.has(`${path}-${number}`)) number++;
  return number;
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

function isRecord(value: unknown): value is Unknown {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isNewer(schema: unknown): boolean {
  return typeof schema === 'string' && Number(/^neckfall\/garden@(\d+)$/.exec(schema)?.[1]) > 1;
}

const longestShown = 40;

function shown(value: unknown): string {
  if (value === undefined) return '';
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? '');
  return text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
}
