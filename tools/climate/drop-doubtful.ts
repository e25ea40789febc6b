import { krigingWeights, lapseCPerM, nearestSites } from '../../packages/engine/src/climate/index.ts';
import { pickStations, type Stations, siteOf } from './stations.ts';

/** A yearly mean this far from what the stations around give is taken as a fault of the table, °C. */
const doubtfulC = 5;

/**
 * Leaves out stations whose yearly mean temperature, at the elevation stated, can't be squared with their neighbours:
 * mostly a missing elevation written as 0, or a position in another valley. One such station would bend its surroundings.
 * A station accused only by another doubtful one stays.
 */
export function dropDoubtful(stations: Stations): Stations {
  const seaLevel = Float64Array.from({ length: stations.count }, (_, row) => {
    let sum = 0;
    for (let m = 0; m < 12; m++) sum += stations.values.tempMeanC[row * 12 + m];
    return sum / 12 + lapseCPerM * stations.elevationM[row];
  });
  const rows = Array.from({ length: stations.count }, (_, row) => row);
  const accused = new Set(rows.filter((row) => doubtful(stations, seaLevel, row, new Set())));
  const dropped = new Set([...accused].filter((row) => doubtful(stations, seaLevel, row, accused)));
  return pickStations(
    stations,
    rows.filter((row) => !dropped.has(row)),
  );
}

function doubtful(
  stations: Stations,
  seaLevel: Float64Array,
  row: number,
  without: ReadonlySet<number>,
): boolean {
  const at = siteOf(stations, row);
  const others = nearestSites(stations, at, 32).filter((other) => other !== row && !without.has(other));
  const site = others.subarray(0, 16);
  const weight = krigingWeights(stations, site, at, 0.05);
  let expected = 0;
  for (let k = 0; k < site.length; k++) expected += weight[k] * seaLevel[site[k]];
  return Math.abs(expected - seaLevel[row]) > doubtfulC;
}
