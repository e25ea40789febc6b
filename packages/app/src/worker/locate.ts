import { locatePoint, locateTown, type Place, type PlaceProblem } from '@neckfall/answers';
import { foldName, type Gazetteer, nearestTown, practiceNear, type Town } from '@neckfall/data';
import type { LocalPractice } from '@neckfall/engine';
import { allTowns, climateNodes, landMask, largeTowns, publishedPractice } from './assets.ts';

export type LocateAsked = {
  latitudeDeg: number;
  longitudeDeg: number;
  /** A town's name, or what the grower calls the place. */
  name: string | null;
  elevationM: number | null;
};

/** Half a step of the town list's coordinates, with the rounding of an address. */
const sameDeg = 0.00061;

/** A place with what growers of its district do, as published. */
export type Located = Place & { practice: readonly LocalPractice[] };

/** The place of an address: the town that is named there, else the bare point. */
export async function locate(asked: LocateAsked): Promise<Located | PlaceProblem> {
  const [found, published] = await Promise.all([placeOf(asked), publishedPractice()]);
  return 'problem' in found ? found : { ...found, practice: practiceNear(published, found.climate) };
}

async function placeOf(asked: LocateAsked): Promise<Place | PlaceProblem> {
  const { latitudeDeg, longitudeDeg, name, elevationM } = asked;
  const [nodes, towns] = await Promise.all([climateNodes(), largeTowns()]);
  const climate = () => nodes;
  const large = townNamed(towns, asked);
  if (large) return locateTown(large, [], elevationM, { climate });
  const all = await allTowns();
  const small = name === null ? null : townNamed(all, asked);
  if (small) return locateTown(small, [], elevationM, { climate });
  const mask = await landMask();
  const point = { latitudeDeg, longitudeDeg, elevationM };
  return locatePoint(point, { climate, gazetteer: () => all, land: () => mask });
}

function townNamed(gazetteer: Gazetteer, { latitudeDeg, longitudeDeg, name }: LocateAsked): Town | null {
  if (name === null) return null;
  const { town } = nearestTown(gazetteer, latitudeDeg, longitudeDeg);
  const isThere =
    Math.abs(town.latitudeDeg - latitudeDeg) < sameDeg &&
    Math.abs(town.longitudeDeg - longitudeDeg) < sameDeg;
  return isThere && foldName(town.name) === foldName(name) ? town : null;
}
