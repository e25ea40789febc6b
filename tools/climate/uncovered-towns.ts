import { type Town, townAt } from '../../packages/data/src/places/index.ts';
import { loadGazetteer } from '../../packages/data/src/places/node.ts';
import {
  type ClimateNodes,
  coverageKm,
  groundKm,
  nearestSites,
  positionAt,
} from '../../packages/engine/src/climate/index.ts';

/** Towns of the gazetteer that lie too far from every node to be answered, most people first, and the number of all. */
export function uncoveredTowns(nodes: ClimateNodes): { all: number; uncovered: Town[] } {
  const gazetteer = loadGazetteer();
  const level = { ...nodes, elevationM: new Float64Array(nodes.count) };
  const uncovered: Town[] = [];
  for (let i = 0; i < gazetteer.townCount; i++) {
    const town = townAt(gazetteer, i);
    const at = positionAt(town.latitudeDeg, town.longitudeDeg, 0);
    const [nearest] = nearestSites(level, at, 1);
    const chord = Math.hypot(
      nodes.xKm[nearest] - at.xKm,
      nodes.yKm[nearest] - at.yKm,
      nodes.zKm[nearest] - at.zKm,
    );
    if (groundKm(chord) > coverageKm) uncovered.push(town);
  }
  return { all: gazetteer.townCount, uncovered: uncovered.sort((a, b) => b.population - a.population) };
}
