import type { Frame } from '../frame/frame.ts';
import { version } from '../version.ts';
import { round } from './values.ts';

/** What every document begins with, after its schema. */
export function documentHead({ place, options, assumed, warnings, sources }: Frame) {
  const { town, near } = place;
  return {
    engine: version,
    place: {
      name: town?.name ?? null,
      country: town?.country ?? null,
      near: near && {
        name: near.town.name,
        country: near.town.country,
        distanceKm: round(near.distanceKm, 1),
      },
      latitudeDeg: place.latitudeDeg,
      longitudeDeg: place.longitudeDeg,
      elevationM: place.elevationM,
      timeZone: place.timeZone,
    },
    assumed,
    warnings,
    sources,
    years: options.years,
    seed: options.seed,
  };
}
