import {
  type GardenPlanting,
  type Job,
  jobsOf,
  keptDays,
  longestSeason,
  parseDay,
  tendOf,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { LeftOut } from '../documents/jobs-document.ts';
import { changeSentences, readGardenText } from '../files/garden-file.ts';
import { readSetting } from '../options/place-options.ts';
import { isGrowable } from '../options/planting-options.ts';
import { refusalOf, refuse } from '../refusal/refusal.ts';
import { refusalLine } from '../refusal/refusal-line.ts';
import { type RawTended, type Tended, tended } from './tended.ts';

/** A crop with the work on it. */
export type CropAtWork = Tended & { jobs: Job[] };

export type CropsAtWork = { crops: CropAtWork[]; leftOut: LeftOut[]; warnings: string[] };

/** The crop of a plan or of `--planting`; of a garden file alone, all that are under way or to come. */
export function cropsAtWork(target: string | undefined, raw: RawTended, speaker: Speaker): CropsAtWork {
  if (raw.planting !== undefined || !target?.endsWith('.neckfall.json'))
    return { crops: [atWork(tended(target, raw, speaker))], leftOut: [], warnings: [] };
  return cropsOfGarden(target, raw, speaker);
}

function atWork(crop: Tended): CropAtWork {
  return { ...crop, jobs: jobsOf({ ...tendOf(crop.crop, crop.kept), marks: crop.marks }) };
}

function cropsOfGarden(path: string, raw: RawTended, speaker: Speaker): CropsAtWork {
  const { garden, changes } = readGardenText(path, 'GARDEN');
  const { today } = readSetting(raw);
  const { say } = speaker;
  const crops: CropAtWork[] = [];
  const leftOut: LeftOut[] = [];
  for (const planting of garden.plantings) {
    const { id, name } = planting;
    const leave = (why: string) => leftOut.push({ id, name, why });
    if (!isGrowable(planting)) leave(say('jobs.why.open'));
    else if (isLongOver(planting, today)) leave(say('jobs.why.over'));
    else {
      try {
        const crop = atWork(tended(path, { ...raw, planting: id }, speaker));
        if (crop.jobs.some(isAhead(today))) crops.push(crop);
        else leave(say('jobs.why.over'));
      } catch (error) {
        // what ails one planting is told and holds up none of the others
        const refusal = refusalOf(error);
        if (refusal === null) throw error;
        leave(refusalLine(refusal, speaker));
      }
    }
  }
  if (crops.length === 0) {
    const values = {
      value: path,
      count: leftOut.length,
      names: speaker.all(leftOut.slice(0, 8).map(({ name }) => name)),
    };
    throw refuse('jobs-none', { field: 'GARDEN', exit: 3, values });
  }
  return { crops, leftOut, warnings: changeSentences(changes, 'GARDEN', path, speaker) };
}

function isLongOver({ startDate }: GardenPlanting, today: number): boolean {
  const start = startDate === null ? null : parseDay(startDate);
  return start !== null && start + longestSeason + keptDays < today;
}

const isAhead =
  (today: number) =>
  ({ state, to }: Job) =>
    to >= today && (state === 'now' || state === 'coming');
