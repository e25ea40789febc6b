import { keepingOf } from '@neckfall/answers';
import {
  groundOf,
  groundUnsaid,
  type JobMark,
  type Kept,
  learntSite,
  parseDay,
  runPlan,
  storeClimateOf,
  type TendedCrop,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type Frame, openFrame } from '../frame/frame.ts';
import { measuredNotes, weatherWarnings } from '../frame/weather-notes.ts';
import { storeOf } from '../options/keep-options.ts';
import { readOnion } from '../options/onion-options.ts';
import { readPlaceOptions } from '../options/place-options.ts';
import { readDays, readPractice } from '../options/plan-options.ts';
import { type RawPlantingOption, refuseGarden } from '../options/planting-options.ts';
import { underWay } from './planting-answer.ts';
import { planOf, type RawSeason } from './season-answer.ts';

/** A crop that is to be tended: of a garden file, or of a place with the options of a plan. */
export type Tended = {
  /** Of the garden's planting; null where the plan is of the command line. */
  planting: { id: string; name: string } | null;
  crop: TendedCrop;
  kept: Kept;
  marks: readonly JobMark[];
  /** What the answer stands on; its site is the crop's. */
  frame: Frame;
  /** The onion by its name; null where it has none. */
  cultivar: string | null;
};

export type RawTended = RawSeason & RawPlantingOption;

/** @param target a garden file with `--planting`, else a place */
export function tended(target: string | undefined, raw: RawTended, speaker: Speaker): Tended {
  if (raw.planting !== undefined) return tendedPlanting(target, raw, speaker);
  refuseGarden(target);
  const options = readPlaceOptions(target, raw);
  const onion = readOnion(raw, speaker);
  const practice = readPractice(raw, speaker);
  const days = readDays(raw, options);
  const frame = openFrame(options, speaker);
  const { plan, assumed } = planOf(frame, onion, { ...practice, ...days, sunHours: options.sunHours });
  const crop: TendedCrop = {
    site: frame.site,
    plan,
    summary: runPlan(frame.site, plan),
    ground: groundUnsaid,
    observations: [],
    today: options.today,
    liftedOn: null,
  };
  noteWeather(frame, crop);
  frame.assumed.push(...assumed);
  frame.warnings.push(...onion.warnings);
  const { keepsMonths } = onion;
  const kept = { keepsMonths, store: storeClimateOf(frame.site.climate, storeOf(null)) };
  return { planting: null, crop, kept, marks: [], frame, cultivar: onion.name };
}

function tendedPlanting(path: string | undefined, raw: RawTended, speaker: Speaker): Tended {
  const { asked, frame, onion, grown, believed, learnt } = underWay(path, raw, speaker);
  const { planting, bed, file } = asked;
  const { plan, assumed } = planOf(frame, onion, grown);
  const site = learntSite(frame.site, learnt, believed);
  frame.site = site;
  const isOf = ({ plantingId }: { plantingId: string | null }) => plantingId === planting.id;
  const { today } = frame.options;
  const crop: TendedCrop = {
    site,
    plan,
    summary: runPlan(site, plan),
    ground: groundOf(planting, bed),
    observations: file.garden.observations.filter(
      (one) => isOf(one) && (parseDay(one.date) ?? Number.POSITIVE_INFINITY) <= today,
    ),
    today,
    liftedOn: learnt.liftedOn,
  };
  noteWeather(frame, crop);
  frame.assumed.push(...assumed);
  frame.warnings.push(...onion.warnings);
  const { cultivars, kitchen } = file.garden;
  return {
    planting: { id: planting.id, name: planting.name },
    crop,
    kept: {
      keepsMonths: keepingOf(cultivars, planting),
      store: storeClimateOf(site.climate, storeOf(kitchen)),
    },
    marks: file.garden.jobs.filter(isOf),
    frame,
    cultivar: onion.name,
  };
}

function noteWeather(frame: Frame, { plan, summary }: TendedCrop): void {
  const measured = measuredNotes(frame, plan.startDay, summary.neckFall.days?.p50 ?? null);
  frame.warnings.push(...weatherWarnings(frame, plan.startDay, plan.startDay), ...measured.warnings);
  frame.assumed.push(...measured.assumed);
}
