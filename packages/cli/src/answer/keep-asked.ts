import type { Garden, GardenPlace, OwnCultivar } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { changeSentences, readGardenFile, readGardenText } from '../files/garden-file.ts';
import { type Frame, openFrame } from '../frame/frame.ts';
import { findPlanting } from '../options/find-planting.ts';
import { findGardenPlace } from '../options/garden-place.ts';
import { type KitchenAsked, type RawKeepOptions, readKitchen } from '../options/keep-options.ts';
import { type RawOutputOptions, type RawPlaceOptions, readPlaceOptions } from '../options/place-options.ts';
import type { RawPlanOptions } from '../options/plan-options.ts';
import type { RawPlantingOption } from '../options/planting-options.ts';
import { refuse } from '../refusal/refusal.ts';
import { gardenGround } from './garden-ground.ts';

export type RawKeep = RawPlaceOptions &
  RawOutputOptions &
  RawPlanOptions &
  RawKeepOptions &
  RawPlantingOption;

/** The kitchen that is asked about, and where; with onions of the grower's own. */
type KeepAsked = {
  kitchen: KitchenAsked;
  own: readonly OwnCultivar[];
  frame: Frame;
  /** Where what was lifted is kept; null without a garden. */
  at: { garden: Garden; place: GardenPlace } | null;
};

/** @param target a garden file, or a town */
export function keepAsked(target: string | undefined, raw: RawKeep, speaker: Speaker): KeepAsked {
  return target?.endsWith('.neckfall.json') ? ofGarden(target, raw, speaker) : ofPlace(target, raw, speaker);
}

function ofPlace(town: string | undefined, raw: RawKeep, speaker: Speaker): KeepAsked {
  if (raw.place !== undefined)
    throw refuse('keep-place-no-garden', { field: '--place', values: { value: raw.place } });
  if (raw.planting !== undefined)
    throw refuse('keep-planting-no-garden', { field: '--planting', values: { value: raw.planting } });
  const kitchen = readKitchen(raw, null, null, speaker);
  const options = readPlaceOptions(town, raw);
  const file = raw.garden === undefined ? null : readGardenFile(raw.garden, speaker);
  const frame = openFrame(options, speaker);
  frame.warnings.push(...(file?.warnings ?? []));
  return { kitchen, own: file?.garden.cultivars ?? [], frame, at: null };
}

/** What the place of a garden says itself. */
const saidByPlace = ['at', 'sun', 'garden'] as const;

function ofGarden(path: string, raw: RawKeep, speaker: Speaker): KeepAsked {
  const besides = saidByPlace.find((option) => raw[option] !== undefined);
  if (besides) {
    const values = { other: path, why: speaker.say('clash.garden-says-place') };
    throw refuse('contradiction', { field: `--${besides}`, values });
  }
  const { garden, changes } = readGardenText(path, 'GARDEN');
  const kitchen = readKitchen(raw, garden.kitchen, path, speaker);
  const planting = raw.planting === undefined ? null : findPlanting(garden, raw.planting, path, speaker);
  const place = findGardenPlace(garden, raw.place ?? planting?.placeId ?? undefined, path, speaker);
  const frame = gardenGround({ path, garden, place }, raw, speaker).usual();
  frame.warnings.push(...changeSentences(changes, 'GARDEN', path, speaker));
  return { kitchen, own: garden.cultivars, frame, at: { garden, place } };
}
