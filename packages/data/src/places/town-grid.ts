import { EARTH_RADIUS_KM, greatCircleKm, RADIANS } from './distance.ts';
import { type Gazetteer, latitudeAt, longitudeAt, partOf } from './gazetteer.ts';

/** Towns sorted into cells of 1° by 1°: `towns[starts[cell]]` to `towns[starts[cell + 1]]` lie in a cell. */
type TownGrid = { readonly starts: Uint32Array; readonly towns: Uint32Array };

const ROWS = 180;
const COLUMNS = 360;

const grids = new WeakMap<Gazetteer, TownGrid>();

function rowOf(latitudeDeg: number): number {
  return Math.min(ROWS - 1, Math.floor(latitudeDeg + 90));
}

function columnOf(longitudeDeg: number): number {
  return ((Math.floor(longitudeDeg + 180) % COLUMNS) + COLUMNS) % COLUMNS;
}

/** Made when first asked for, by counting: most runs of the program ask for one town by its name only. */
function gridOf(gazetteer: Gazetteer): TownGrid {
  const known = grids.get(gazetteer);
  if (known !== undefined) return known;
  const cells = new Uint16Array(gazetteer.townCount);
  const starts = new Uint32Array(ROWS * COLUMNS + 1);
  for (const part of gazetteer.parts) {
    for (let row = 0; row < part.count; row++) {
      const cell = rowOf(latitudeAt(part, row)) * COLUMNS + columnOf(longitudeAt(part, row));
      cells[part.firstTown + row] = cell;
      starts[cell + 1]++;
    }
  }
  for (let cell = 0; cell < ROWS * COLUMNS; cell++) starts[cell + 1] += starts[cell];
  const next = starts.slice();
  const towns = new Uint32Array(gazetteer.townCount);
  for (let town = 0; town < cells.length; town++) towns[next[cells[town]]++] = town;
  const grid = { starts, towns };
  grids.set(gazetteer, grid);
  return grid;
}

/** No point outside the square of cells up to `ring` away is nearer than this: next row, or next meridian. */
function leastBeyondRingKm(latitudeDeg: number, ring: number): number {
  const turn = Math.min(ring, 90) * RADIANS;
  return EARTH_RADIUS_KM * Math.min(turn, Math.asin(Math.cos(latitudeDeg * RADIANS) * Math.sin(turn)));
}

export type TownDistance = { readonly town: number; readonly distanceKm: number };

/** The nearest town, of those accepted, within `withinKm`; null when there is none. */
export function nearestAccepted(
  gazetteer: Gazetteer,
  latitudeDeg: number,
  longitudeDeg: number,
  accepts: (town: number) => boolean,
  withinKm: number,
): TownDistance | null {
  const { starts, towns } = gridOf(gazetteer);
  const row = rowOf(latitudeDeg);
  const column = columnOf(longitudeDeg);
  let best: TownDistance | null = null;
  let bound = withinKm;

  const searchCell = (cellRow: number, cellColumn: number) => {
    const cell = cellRow * COLUMNS + ((cellColumn + COLUMNS) % COLUMNS);
    for (let i = starts[cell]; i < starts[cell + 1]; i++) {
      const town = towns[i];
      if (!accepts(town)) continue;
      const distanceKm = distanceTo(gazetteer, town, latitudeDeg, longitudeDeg);
      if (distanceKm > bound || (distanceKm === bound && best !== null && town > best.town)) continue;
      best = { town, distanceKm };
      bound = distanceKm;
    }
  };

  for (let ring = 0; ring <= COLUMNS / 2; ring++) {
    for (let r = Math.max(0, row - ring); r <= Math.min(ROWS - 1, row + ring); r++) {
      const isEdge = r === row - ring || r === row + ring;
      for (let c = -ring; c <= ring; c += isEdge || ring === 0 ? 1 : 2 * ring) searchCell(r, column + c);
    }
    if (leastBeyondRingKm(latitudeDeg, ring) > bound) break;
  }
  return best;
}

function distanceTo(gazetteer: Gazetteer, town: number, latitudeDeg: number, longitudeDeg: number): number {
  const part = partOf(gazetteer, town);
  const row = town - part.firstTown;
  return greatCircleKm(latitudeDeg, longitudeDeg, latitudeAt(part, row), longitudeAt(part, row));
}
