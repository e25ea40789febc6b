import {
  locatePoint,
  locateTown,
  type Place,
  type PlaceAssets,
  type PlaceProblem,
  type Point,
  pointLabel,
  townLabel,
} from '@neckfall/answers';
import { resolveTown, type TownAnswer } from '@neckfall/data';
import { coverageKm } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { PlaceOptions } from '../options/place-options.ts';
import { refuse } from '../refusal/refusal.ts';

type UnknownTown = Extract<TownAnswer, { kind: 'unknown' }>;

/** The place asked for, or a refusal: unknown, at sea, beyond the covered land. */
export function resolvePlace(asked: PlaceOptions['asked'], assets: PlaceAssets, speaker: Speaker): Place {
  return 'town' in asked
    ? placeOfTown(asked.town, assets, speaker)
    : placeOfPoint(asked.at, asked.point, assets, speaker);
}

function placeOfTown(text: string, assets: PlaceAssets, speaker: Speaker): Place {
  const answer = resolveTown(assets.gazetteer(), text);
  if (answer.kind === 'unknown') throw unknownTown(text, answer, speaker);
  const place = locateTown(answer.town, answer.others, null, assets);
  if ('problem' in place) throw placeRefusal(townLabel(answer.town, speaker), null, place, speaker);
  return place;
}

function unknownTown(value: string, answer: UnknownTown, speaker: Speaker) {
  const nearest = answer.nearest.map((town) => townLabel(town, speaker));
  switch (answer.reason) {
    case 'name':
      return refuse('town-unknown', { values: { value }, nearest });
    case 'postcode':
      return refuse('postcode', { values: { value } });
    case 'not-in-area':
      return refuse('town-not-in-area', { values: { town: answer.name, area: answer.area }, nearest });
    case 'area':
      return refuse('area-unknown', { values: { value, area: answer.area }, nearest });
  }
}

function placeOfPoint(text: string, point: Point, assets: PlaceAssets, speaker: Speaker): Place {
  const place = locatePoint(point, assets);
  if ('problem' in place) throw placeRefusal(text, point, place, speaker);
  return place;
}

function placeRefusal(value: string, point: Point | null, found: PlaceProblem, speaker: Speaker) {
  const { quantity } = speaker;
  switch (found.problem) {
    case 'beyond-latitudes':
      return refuse('beyond-latitudes', { values: { value } });
    case 'at-sea':
      return refuse('at-sea', {
        field: '--at',
        values: { value, distance: quantity('distance', found.near.distanceKm) },
        nearest: [townLabel(found.near.town, speaker)],
      });
    case 'beyond-nodes':
      return refuse('beyond-nodes', {
        values: {
          value: point && found.near ? pointLabel(point, found.near.town, speaker) : value,
          distance: quantity('distance', found.nearestNodeKm),
          limit: quantity('distance', coverageKm),
        },
      });
  }
}
