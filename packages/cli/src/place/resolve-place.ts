import { isLand, nearestTown, resolveTown, type Town } from '@neckfall/data';
import { type ClimatePoint, climateAt, coverageKm } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { PlaceOptions } from '../options/place-options.ts';
import { refuse } from '../refusal.ts';
import type { Point } from '../values/point.ts';
import type { Assets } from './assets.ts';
import type { Place } from './place.ts';
import { pointLabel, townLabel } from './place-label.ts';

/** Land that is covered. */
const southernmostDeg = -60;
const northernmostDeg = 72;

/** The place asked for, or a refusal: unknown, at sea, beyond the covered land. */
export function resolvePlace(asked: PlaceOptions['asked'], assets: Assets, speaker: Speaker): Place {
  return 'town' in asked
    ? placeOfTown(asked.town, assets, speaker)
    : placeOfPoint(asked.at, asked.point, assets, speaker);
}

function placeOfTown(text: string, assets: Assets, speaker: Speaker): Place {
  const answer = resolveTown(assets.gazetteer(), text);
  if (answer.kind === 'unknown') throw unknownTown(text, answer.reason, answer.nearest, speaker);
  const { town, others } = answer;
  const { latitudeDeg, longitudeDeg, elevationM, timeZone } = town;
  const name = townLabel(town, speaker);
  refuseBeyondLatitudes(name, latitudeDeg);
  const climate = coveredClimate(name, assets, latitudeDeg, longitudeDeg, elevationM, speaker);
  const at = { latitudeDeg, longitudeDeg, elevationM, timeZone };
  return { town, near: null, ...at, climate, elevationFrom: 'town', others };
}

function unknownTown(
  text: string,
  reason: 'name' | 'not-in-area' | 'area',
  towns: readonly Town[],
  speaker: Speaker,
) {
  const nearest = towns.map((town) => townLabel(town, speaker));
  const comma = text.lastIndexOf(',');
  if (reason === 'name' || comma < 0) return refuse('town-unknown', { values: { value: text }, nearest });
  const values = { town: text.slice(0, comma).trim(), area: text.slice(comma + 1).trim() };
  return refuse(reason === 'area' ? 'area-unknown' : 'town-not-in-area', { values, nearest });
}

function placeOfPoint(text: string, point: Point, assets: Assets, speaker: Speaker): Place {
  const { latitudeDeg, longitudeDeg } = point;
  refuseBeyondLatitudes(text, latitudeDeg);
  const near = nearestTown(assets.gazetteer(), latitudeDeg, longitudeDeg);
  if (!isLand(assets.land(), latitudeDeg, longitudeDeg)) {
    throw refuse('at-sea', {
      field: '--at',
      values: { value: text, distance: speaker.quantity('distance', near.distanceKm) },
      nearest: [townLabel(near.town, speaker)],
    });
  }
  const name = pointLabel(point, near.town, speaker);
  let climate = coveredClimate(name, assets, latitudeDeg, longitudeDeg, point.elevationM, speaker);
  let elevationFrom: Place['elevationFrom'] = point.elevationM === null ? 'node' : 'given';
  if (point.elevationM === null && near.distanceKm <= climate.nearestNodeKm) {
    elevationFrom = 'near-town';
    climate = climateAt(assets.climate(), latitudeDeg, longitudeDeg, near.town.elevationM);
  }
  const at = { latitudeDeg, longitudeDeg, elevationM: climate.elevationM, timeZone: near.town.timeZone };
  return { town: null, near, ...at, climate, elevationFrom, others: [] };
}

function refuseBeyondLatitudes(value: string, latitudeDeg: number): void {
  if (latitudeDeg < southernmostDeg || latitudeDeg > northernmostDeg) {
    throw refuse('beyond-latitudes', { values: { value } });
  }
}

function coveredClimate(
  value: string,
  assets: Assets,
  latitudeDeg: number,
  longitudeDeg: number,
  elevationM: number | null,
  speaker: Speaker,
): ClimatePoint {
  const climate = climateAt(assets.climate(), latitudeDeg, longitudeDeg, elevationM);
  if (climate.nearestNodeKm > coverageKm) {
    const distance = speaker.quantity('distance', climate.nearestNodeKm);
    throw refuse('beyond-nodes', {
      values: { value, distance, limit: speaker.quantity('distance', coverageKm) },
    });
  }
  return climate;
}
