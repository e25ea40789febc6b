import {
  type Belief,
  beliefSite,
  believedOf,
  type DailyRecord,
  frostHollowC,
  type GardenPlanting,
  inFrostHollow,
  type LearntSeason,
  learnSeason,
  learntSite,
  openSite,
  type PlanWithout,
  parseDay,
  runPlan,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { WeatherFile } from '../files/weather-file.ts';
import { type Frame, openFrame, openGround, siteOptionsOf } from '../frame/frame.ts';
import { laidOver, weatherUntil } from '../frame/garden-weather.ts';
import { type AskedOnion, readOnion } from '../options/onion-options.ts';
import { type PlaceOptions, readSetting } from '../options/place-options.ts';
import { type Practice, readPractice } from '../options/plan-options.ts';
import {
  type AskedPlanting,
  isGrowable,
  type RawPlantingOption,
  rawOfPlanting,
  readPlanting,
} from '../options/planting-options.ts';
import { ownAssets } from '../place/assets.ts';
import type { Answer } from './answer.ts';
import { planOf, type RawSeason, tellSeason } from './season-answer.ts';
import { seenSeason } from './seen-season.ts';

/** A planting of a garden file with what was seen of it till the day it is. */
export function plantingAnswer(
  path: string | undefined,
  raw: RawSeason & RawPlantingOption,
  speaker: Speaker,
): Answer {
  const { frame, onion, grown, believed, learnt } = openPlanting(path, raw, speaker);
  const { plan, assumed } = planOf(frame, onion, grown);
  const { site } = frame;
  const expected = runPlan(believed ? beliefSite(site, believed) : site, plan);
  frame.site = learntSite(site, learnt, believed);
  const seen = seenSeason(learnt, expected, believed !== null, speaker);
  return tellSeason(frame, onion, plan, assumed, raw.days === true, seen);
}

/** A planting of a garden file at its place, and what was learnt of it. */
export type OpenPlanting = Grown & {
  frame: Frame;
  /** What earlier plantings have told; null: none is learnt from. */
  believed: Belief | null;
  learnt: LearntSeason;
};

type Grown = {
  onion: AskedOnion;
  practice: Practice;
  /** The practice with its days and its sun. */
  grown: PlanWithout<'type' | 'traits'>;
};

export function openPlanting(
  path: string | undefined,
  raw: RawSeason & RawPlantingOption,
  speaker: Speaker,
): OpenPlanting {
  const asked = readPlanting(path, raw, speaker);
  const { file, planting } = asked;
  const frame = gardenFrame(asked, raw, speaker);
  const learn = (of: GardenPlanting, believed: Belief | null): LearntSeason => {
    const { onion, grown } = grownAs(of, asked.path, frame);
    const { plan } = planOf(frame, onion, grown);
    const seen = file.garden.observations.filter(({ plantingId }) => plantingId === of.id);
    return learnSeason(frame.site, plan, seen, frame.options.today, believed);
  };
  const believed = believedOf(file.garden, planting, (earlier, before) =>
    isGrowable(earlier) ? learn(earlier, before).belief : null,
  );
  return { frame, believed, learnt: learn(planting, believed), ...grownAs(planting, asked.path, frame) };
}

function grownAs(planting: GardenPlanting, path: string, { options, speaker }: Frame): Grown {
  const raw = rawOfPlanting(planting);
  const { startDate, plantOutDate } = planting;
  const onion = readOnion({ ...raw, garden: path }, speaker);
  const practice = readPractice(raw, speaker);
  const startDay = (startDate === null ? null : parseDay(startDate)) ?? options.today;
  const plantOutDay = plantOutDate === null ? null : parseDay(plantOutDate);
  const grown = { ...practice, startDay, plantOutDay, sunHours: options.sunHours };
  return { onion, practice, grown };
}

/** The weather a garden keeps, under that of a file. */
function keptFile(path: string, kept: DailyRecord, given: WeatherFile | null): WeatherFile {
  const file = given
    ? { path: given.path, reading: given.reading, record: laidOver(kept, given.record) }
    : { path, reading: null, record: kept };
  return { ...file, at: (place) => keptFile(path, kept, given?.at(place) ?? null) };
}

/** The place of a planting as a frame, with the weather that came there. */
function gardenFrame({ path, file, place }: AskedPlanting, raw: RawSeason, speaker: Speaker): Frame {
  const { latitudeDeg, longitudeDeg, elevationM, sunHours } = place;
  const setting = readSetting(raw);
  const kept = file.garden.weather.find(({ placeId }) => placeId === place.id);
  const given = setting.weather;
  const record = kept ? weatherUntil(kept, setting.today) : null;
  const options: PlaceOptions = {
    ...setting,
    asked: { at: `${latitudeDeg},${longitudeDeg}`, point: { latitudeDeg, longitudeDeg, elevationM } },
    sunHours,
    weather: record ? keptFile(path, record, given) : given,
  };
  const ground = openGround(options, speaker, ownAssets);
  if (place.frostHollow) {
    ground.place = { ...ground.place, climate: inFrostHollow(ground.place.climate) };
    ground.site = openSite(siteOptionsOf({ ...ground, options: { ...options, weather: ground.weather } }));
  }
  const frame = openFrame(options, speaker, ownAssets, ground);
  if (place.frostHollow)
    frame.assumed.push(
      speaker.say('app.how.hollow', { colder: speaker.quantity('temperatureDifference', frostHollowC) }),
    );
  return { ...frame, label: place.name };
}
