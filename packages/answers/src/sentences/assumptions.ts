import {
  type DayNumber,
  indoorNurseryC,
  type LocalPractice,
  longestTrayWeeks,
  type Plan,
  type PlanWithout,
  plantingOut,
  type StartMethod,
  seedbedFromC,
  startWays,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type Place, townLabel } from '../place/index.ts';

/** What is set about the weather and the light of a place. */
export type SiteSettings = {
  /** Warming offset in force, °C. */
  warmerC: number;
  warmerFrom: 'default' | 'given';
  /** Direct sun at midsummer, h; null: open. */
  sunHours: number | null;
};

/** What was taken for granted about the place, in sentences. */
export function placeAssumptions(
  place: Place,
  { warmerC, warmerFrom, sunHours }: SiteSettings,
  speaker: Speaker,
): string[] {
  const { say, quantity, dayLength } = speaker;
  const elevation = quantity('elevation', place.elevationM);
  const warmer = quantity('temperatureDifference', Math.abs(warmerC));
  return [
    elevationSentence(place, elevation, speaker),
    warmerFrom === 'default'
      ? say('assumed.warmer', { warmer })
      : say('assumed.warmer-given', {
          warmer,
          way: warmerC > 0 ? 'warmer' : warmerC < 0 ? 'cooler' : 'same',
        }),
    sunHours === null ? say('assumed.open') : say('assumed.sun', { hours: dayLength(sunHours) }),
  ];
}

function elevationSentence(place: Place, elevation: string, speaker: Speaker): string {
  const { say, quantity } = speaker;
  switch (place.elevationFrom) {
    case 'given':
      return say('assumed.elevation-given', { elevation });
    case 'town':
      return say('assumed.elevation-town', { elevation, town: place.town?.name ?? '' });
    case 'near-town':
      return say('assumed.elevation-near', {
        elevation,
        town: place.near ? townLabel(place.near.town, speaker) : '',
        distance: quantity('distance', place.near?.distanceKm ?? 0),
      });
    case 'node':
      return say('assumed.elevation-node', {
        elevation,
        distance: quantity('distance', place.climate.nearestNodeKm),
      });
  }
}

/** Whose calendars of the district settle ties between kinds and dates; none where none is known. */
export function districtAssumption(practice: readonly LocalPractice[], { say, all }: Speaker): string[] {
  if (practice.length === 0) return [];
  const sources = [...new Set(practice.map(({ source }) => source))];
  return [say('assumed.district', { sources: all(sources) })];
}

/** Whose beds the sizes of an answer are; an ordinary garden is told from them once and put into no number. */
export function sizesAssumption(water: Plan['water'], { say }: Speaker): string {
  return say('assumed.sizes', { water });
}

/**
 * What was taken for granted about the way of growing, the onion apart.
 *
 * @param isOverYear whether starts of the whole year are meant: a nursery left open is then indoors for some
 */
export function practiceAssumptions(
  plan: PlanWithout<'type' | 'traits' | 'startDay' | 'plantOutDay' | 'sunHours'> & {
    plantOutDay?: DayNumber | null;
  },
  speaker: Speaker,
  isOverYear = false,
): string[] {
  const { say, quantity, dayLength } = speaker;
  const sentences = [
    say('assumed.practice', {
      density: quantity('density', plan.densityPerM2),
      soil: say(`soil.${plan.soil}`),
      water: say(`water.${plan.water}`),
      cover: say(`cover.${plan.cover}`),
    }),
  ];
  if (plan.start === 'sets') {
    sentences.push(
      say('assumed.sets', {
        size: quantity('bulbLength', plan.setSizeMm),
        store: say(`store.${plan.setStore}`),
      }),
    );
  }
  if (plan.start === 'raised-seedlings') {
    sentences.push(
      say('assumed.nursery', {
        temperature:
          plan.nurseryTempC === null
            ? isOverYear
              ? 'varies'
              : 'outdoors'
            : quantity('temperature', plan.nurseryTempC),
        indoors: quantity('temperature', indoorNurseryC),
        warm: quantity('temperature', seedbedFromC),
        lamps: plan.lampHours === null ? 'none' : dayLength(plan.lampHours),
      }),
    );
    if ((plan.plantOutDay ?? null) === null) {
      sentences.push(
        say('assumed.plant-out', {
          leaves: speaker.number(plantingOut.leaves, 1),
          weeks: plantingOut.latestWeeks,
          temperature: quantity('temperature', plantingOut.bedC),
        }),
      );
    }
  }
  if (isOverYear) sentences.push(...startSeason(plan.start, say));
  return [...sentences, sizesAssumption(plan.water, speaker)];
}

/** When a start of its kind can be made at all; seed in place waits for the bed alone. */
function startSeason(start: StartMethod, say: Speaker['say']): string[] {
  const { from, standsInTrays } = startWays[start];
  if (standsInTrays) return [say('assumed.season-of-trays', { weeks: longestTrayWeeks })];
  return from === 'seed' ? [] : [say(`assumed.season-of-${from}`)];
}
