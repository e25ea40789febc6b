import { alliumWarnings } from '@neckfall/answers';
import {
  alliumsBefore,
  type Belief,
  beliefSite,
  believedOf,
  type GardenPlanting,
  type LearntSeason,
  learnSeason,
  learntSite,
  type PlanWithout,
  parseDay,
  plantingInBed,
  plantOutFor,
  runPlan,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Frame } from '../frame/frame.ts';
import { type AskedOnion, readOnion } from '../options/onion-options.ts';
import type { PlaceOptions } from '../options/place-options.ts';
import { type Practice, readPractice } from '../options/plan-options.ts';
import {
  type AskedPlanting,
  isGrowable,
  type RawPlantingOption,
  rawOfPlanting,
  readPlanting,
} from '../options/planting-options.ts';
import { refusalOf } from '../refusal/refusal.ts';
import type { Answer } from './answer.ts';
import { gardenGround } from './garden-ground.ts';
import { planOf, type RawSeason, tellSeason } from './season-answer.ts';
import { seenSeason } from './seen-season.ts';

/** A planting of a garden file with what was seen of it till the day it is. */
export function plantingAnswer(
  path: string | undefined,
  raw: RawSeason & RawPlantingOption,
  speaker: Speaker,
): Answer {
  const { frame, onion, grown, believed, learnt } = underWay(path, raw, speaker);
  const { plan, assumed } = planOf(frame, onion, grown);
  const { site } = frame;
  const expected = runPlan(believed ? beliefSite(site, believed) : site, plan);
  frame.site = learntSite(site, learnt, believed);
  const seen = seenSeason(learnt, expected, believed !== null, speaker);
  return tellSeason(frame, onion, plan, assumed, raw.days === true, seen);
}

/** A planting of a garden file at its place, as it is grown. */
export type OpenPlanting = Grown & {
  frame: Frame;
  /** What earlier plantings have told; null: none has. */
  believed: Belief | null;
};

type Grown = {
  onion: AskedOnion;
  practice: Practice;
  /** The practice with its days and its sun. */
  grown: PlanWithout<'type' | 'traits'>;
};

/**
 * The season under way of a planting, in the weather that came.
 *
 * Decision 36: a crop that was started lives through what its garden keeps of the weather, a start to come does not.
 */
export function underWay(path: string | undefined, raw: RawSeason & RawPlantingOption, speaker: Speaker) {
  const { asked, ground, believed } = openGarden(path, raw, speaker);
  const own = grownAs(asked.planting, asked.path, ground.options, speaker);
  const isStarted = own.grown.startDay <= ground.options.today;
  const frame = isStarted ? ground.met() : ground.usual();
  frame.warnings.push(...alliumWarnings(alliumsBefore(asked.file.garden, asked.planting), speaker));
  return { ...own, asked, frame, believed, learnt: learn(asked, asked.planting, own, frame, believed) };
}

/** A planting whose onion is tried at starts to come. */
export function openPlanting(
  path: string | undefined,
  raw: RawSeason & RawPlantingOption,
  speaker: Speaker,
): OpenPlanting {
  const { asked, ground, believed } = openGarden(path, raw, speaker);
  const own = grownAs(asked.planting, asked.path, ground.options, speaker);
  return { ...own, frame: ground.usual(), believed };
}

/** The planting asked for, its place, and what earlier plantings told, each in the weather that it had. */
function openGarden(path: string | undefined, raw: RawSeason & RawPlantingOption, speaker: Speaker) {
  const asked = readPlanting(path, raw, speaker);
  const ground = gardenGround(
    { path: asked.path, garden: asked.file.garden, place: asked.place },
    raw,
    speaker,
  );
  const believed = believedOf(asked.file.garden, asked.planting, (earlier, belief) => {
    const before = plantingInBed(asked.file.garden, earlier);
    const grown = isGrowable(before) ? grownOrNull(before, asked.path, ground.options, speaker) : null;
    return grown && learn(asked, earlier, grown, ground.met(), belief).belief;
  });
  return { asked, ground, believed };
}

function learn(
  { file }: AskedPlanting,
  planting: GardenPlanting,
  { onion, grown }: Grown,
  { site, options }: Pick<Frame, 'site' | 'options'>,
  believed: Belief | null,
): LearntSeason {
  const { plan } = planOf({ site }, onion, grown);
  const seen = file.garden.observations.filter(({ plantingId }) => plantingId === planting.id);
  return learnSeason(site, plan, seen, options.today, believed);
}

function grownAs(planting: GardenPlanting, path: string, options: PlaceOptions, speaker: Speaker): Grown {
  const raw = rawOfPlanting(planting);
  const { startDate, plantOutDate } = planting;
  const onion = readOnion({ ...raw, garden: path }, speaker);
  const practice = readPractice(raw, speaker);
  const startDay = (startDate === null ? null : parseDay(startDate)) ?? options.today;
  const plantOutDay = plantOutFor(plantOutDate === null ? null : parseDay(plantOutDate), {
    start: practice.start,
    startDay,
  });
  const grown = { ...practice, startDay, plantOutDay, sunHours: options.sunHours };
  return { onion, practice, grown };
}

/** Null where an earlier planting can't be grown as its file has it, which is no fault of the one asked for. */
function grownOrNull(...of: Parameters<typeof grownAs>): Grown | null {
  try {
    return grownAs(...of);
  } catch (error) {
    if (refusalOf(error) === null) throw error;
    return null;
  }
}
