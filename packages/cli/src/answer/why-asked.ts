import { findCultivar } from '@neckfall/data';
import {
  type DayNumber,
  latestStart,
  learntSite,
  type Plan,
  type PlanForm,
  type StartMethod,
  startMethods,
  storeClimateOf,
  usualStart,
  type WhyAsked,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { yearOf } from '../documents/values.ts';
import type { OpenWhy } from '../documents/why-document.ts';
import { openFrame } from '../frame/frame.ts';
import { type AskedOnion, readOnion } from '../options/onion-options.ts';
import { type RawOutputOptions, type RawPlaceOptions, readPlaceOptions } from '../options/place-options.ts';
import {
  type RawPlanOptions,
  readPlantOut,
  readPractice,
  readStart,
  startToldBy,
} from '../options/plan-options.ts';
import { type RawPlantingOption, rawOfPlanting, refuseGarden } from '../options/planting-options.ts';
import { readersSpeaker } from '../options/speaker-for.ts';
import {
  lastNoticed,
  noticedAfter,
  readNoticed,
  readStartDay,
  readYear,
  refuseFuture,
  startIn,
} from '../options/why-days.ts';
import {
  fieldsSaid,
  type RawWhyOptions,
  readSaid,
  readSeen,
  readStored,
  type Stored,
} from '../options/why-options.ts';
import { refuse } from '../refusal/refusal.ts';
import { underWay } from './planting-answer.ts';
import { planOf } from './season-answer.ts';
import { noteGrounds, type Unsaid } from './why-grounds.ts';

export type RawWhy = RawPlaceOptions & RawOutputOptions & RawPlanOptions & RawWhyOptions & RawPlantingOption;

/** The crop, with its frame and what is known of it. */
type Crop = Pick<OpenWhy, 'frame' | 'plantingId'> & {
  onion: AskedOnion;
  plan: Plan;
  said: ReadonlySet<keyof PlanForm>;
  assumed: readonly string[];
  unsaid: Unsaid;
};

type Seen = Pick<WhyAsked, 'symptoms' | 'answers' | 'noticed'> & { stored: Stored };

/** @param target a garden file with `--planting`, else a place */
export function openWhy(target: string | undefined, raw: RawWhy, speaker: Speaker): OpenWhy {
  const said = { symptoms: readSeen(raw, readersSpeaker(raw)), answers: readSaid(raw, speaker) };
  if (raw.planting !== undefined) return ofPlanting(target, raw, said, speaker);
  refuseGarden(target);
  return ofPlace(target, raw, said, speaker);
}

type Said = Pick<Seen, 'symptoms' | 'answers'>;

function ofPlace(target: string | undefined, raw: RawWhy, said: Said, speaker: Speaker): OpenWhy {
  const options = readPlaceOptions(target, raw);
  const { today, sunHours, weather } = options;
  const noticed = readNoticed(raw, today);
  const stored = readStored(raw, null, speaker);
  const year = readYear(raw, today, weather?.record ?? null);
  const startSaid = readStartDay(raw, today, weather?.record ?? null, speaker);
  const onionSaid = readOnionSaid(raw, speaker);
  const start = raw.start === undefined ? startToldBy(raw) : readStart(raw.start, speaker);
  const frame = openFrame(options, speaker);
  const latest = latestStart(said.symptoms, lastNoticed(noticed, today) ?? today);
  const dayOf = (like: DayNumber) => startIn(like, year, latest);
  const cropSaid = {
    crop: onionSaid?.cropIn(year ?? yearOf(latest)) ?? null,
    sold: soldAs(raw.cultivar),
    start: start ?? null,
    startDay: startSaid && ('day' in startSaid ? startSaid.day : dayOf(startSaid.like)),
    symptoms: said.symptoms,
  };
  const usual = usualStart(frame.site, cropSaid, today);
  const startDay = cropSaid.startDay ?? dayOf(usual.startDay);
  refuseFuture(raw.year === undefined ? '--date' : '--year', raw.year ?? raw.date ?? '', startDay, today);
  const onion = onionSaid ?? readOnion({ ...raw, ...(usual.class && { class: usual.class }) }, speaker);
  const practice = readPractice({ ...raw, start: usual.start }, speaker);
  const plantOutDay = raw.plantOut === undefined ? null : readPlantOut(raw.plantOut, startDay);
  const grown = { ...practice, startDay, plantOutDay, sunHours };
  const { plan, assumed } = planOf(frame, onion, grown);
  const unsaid = {
    onion: onionSaid === null,
    start: start === undefined,
    day: startSaid === null,
    season: startSaid !== null && 'like' in startSaid && year === null,
  };
  return opened(
    { frame, onion, plan, plantingId: null, said: fieldsSaid(raw, sunHours), assumed, unsaid },
    { ...said, stored, noticed: noticedAfter(noticed, startDay, today, raw.noticed) },
    raw,
  );
}

/** Null where nothing was said of it. */
function readOnionSaid(raw: RawPlanOptions, speaker: Speaker): AskedOnion | null {
  const { class: printed, cultivar, packetHours, packetDays } = raw;
  const isSaid = [printed, cultivar, packetHours, packetDays].some((word) => word !== undefined);
  return isSaid ? readOnion(raw, speaker) : null;
}

/** Ways in which an onion of the catalogue is sold; any where that is not known. */
function soldAs(name: string | undefined): readonly StartMethod[] {
  const known = name === undefined ? [] : (findCultivar(name).match?.starts ?? []);
  return known.length > 0 ? known : startMethods;
}

const allSaid: Unsaid = { onion: false, start: false, day: false, season: false };

function ofPlanting(path: string | undefined, raw: RawWhy, said: Said, speaker: Speaker): OpenWhy {
  if (raw.year !== undefined) {
    const values = { other: `--planting ${raw.planting}`, why: speaker.say('clash.planting-says-all') };
    throw refuse('contradiction', { field: '--year', values });
  }
  const { asked, frame, onion, grown, believed, learnt } = underWay(path, raw, speaker);
  const { planting, file } = asked;
  const { today, sunHours } = frame.options;
  const { startDay } = grown;
  refuseFuture('--planting', raw.planting ?? '', startDay, today);
  const { plan, assumed } = planOf(frame, onion, grown);
  frame.site = learntSite(frame.site, learnt, believed);
  const { startDate } = planting;
  const asOptions = { ...rawOfPlanting(planting), ...(startDate !== null && { date: startDate }) };
  const noticed = noticedAfter(readNoticed(raw, today), startDay, today, raw.noticed);
  return opened(
    {
      frame,
      onion,
      plan,
      plantingId: planting.id,
      said: fieldsSaid(asOptions, sunHours),
      assumed,
      unsaid: allSaid,
    },
    { ...said, stored: readStored(raw, file.garden.kitchen, speaker), noticed },
    raw,
  );
}

function opened(
  { frame, onion, plan, plantingId, said, assumed, unsaid }: Crop,
  { stored, ...seen }: Seen,
  raw: RawWhy,
): OpenWhy {
  const { site, options } = frame;
  const asked: WhyAsked = {
    ...seen,
    plan,
    said,
    isAbout: raw.about === true,
    today: options.today,
    store: storeClimateOf(site.climate, stored.store),
    isStoreSaid: stored.isSaid,
    keepsMonths: onion.keepsMonths,
  };
  frame.warnings.push(...onion.warnings);
  noteGrounds(frame, asked, stored, unsaid, assumed);
  return { frame, asked, cultivar: onion.name, plantingId };
}
