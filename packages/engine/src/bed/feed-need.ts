import { lerp } from '../math/index.ts';
import { drawnNitrogenG, readFeedProduct } from './feed-product.ts';
import type { Fertility } from './ground.ts';
import type { SoilTexture } from './soil-texture.ts';

/*
 * Nitrogen of an onion crop. A crop of 6 kg/m² takes 10.8 g N per m² away with it and has to be able to draw on
 * 12–14 g, what lies in the soil down to 600 mm counted in (Khokhar 2019, review of onion nutrition). California measured
 * 1.97 g per kg, 0.8–3.1 (CDFA, nitrogen of onions).
 */
/** Nitrogen a crop takes away with it, g per kg of bulbs; sources above. */
export const nitrogenRemovedGPerKg = 10.8 / 6;
/** Nitrogen a crop has to be able to draw on, g per kg of bulbs; see {@link nitrogenRemovedGPerKg}. */
export const nitrogenSuppliedGPerKg = 13 / 6;

/**
 * What a soil gives by itself in a season, g N per m² (memory; apart by about as much as Gonzalez et al. 2016 gave less to
 * rich Quebec muck than to poor, 6 against 18 g).
 */
const soilNitrogenG: Readonly<Record<Fertility, number>> = { poor: 1, ordinary: 4, rich: 10 };

/** What peas, beans or clover leave behind for the crop after them, g N per m² (memory: 2–5). */
const legumeNitrogenG = 3;

/** Share of nitrogen given that rain takes below the roots before they have it (memory); elsewhere the supply counts it in. */
const lostOnCoarse = 0.25;
const coarseSoils: readonly SoilTexture[] = ['sand', 'loamy-sand'];

/** Whether rain takes nitrogen below the roots before onions have it: sand and loamy sand. */
export function isCoarse(texture: SoilTexture): boolean {
  return coarseSoils.includes(texture);
}

/** What a bed gives without feed, g N per m². */
export type BedNitrogen = { soil: number; compost: number; legume: number };

/**
 * What a bed gives without feed, g N per m².
 * @param compostKgPerM2 compost spread, kg per m²
 */
export function bedNitrogen(
  fertility: Fertility,
  compostKgPerM2: number,
  isAfterLegume: boolean,
): BedNitrogen {
  return {
    soil: soilNitrogenG[fertility],
    compost: drawnNitrogenG(readFeedProduct('compost')!, 1000 * compostKgPerM2),
    legume: isAfterLegume ? legumeNitrogenG : 0,
  };
}

/** Nitrogen to be given for a crop, g per m², over what its bed gives. */
export function nitrogenToGive(aimKgPerM2: number, bed: BedNitrogen, texture: SoilTexture): number {
  const lacking = aimKgPerM2 * nitrogenSuppliedGPerKg - bed.soil - bed.compost - bed.legume;
  return Math.max(0, lacking) / (isCoarse(texture) ? 1 - lostOnCoarse : 1);
}

/**
 * Share of its nitrogen that a crop has taken up by so many leaves, before bulbs begin (memory: built to fit CDFA's text
 * and PNW 546, which have three quarters by mid bulb and all when a tenth of the tops are down).
 */
const taken = [
  [0, 0],
  [3, 0.05],
  [5, 0.15],
  [7.5, 0.375],
] as const;

/**
 * Share of its nitrogen, 0…1, that a crop has taken up by so many leaves, before bulbs begin (memory; see the table
 * above).
 */
export function nitrogenTakenShare(leaves: number): number {
  for (let at = 1; at < taken.length; at++) {
    const [[before, least], [after, most]] = [taken[at - 1], taken[at]];
    if (leaves <= after) return lerp(least, most, (leaves - before) / (after - before));
  }
  return taken[taken.length - 1][1];
}
