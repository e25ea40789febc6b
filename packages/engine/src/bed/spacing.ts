/** How plants are set: from row to row, from place to place in the row, and how many stand together at each place. */
export type Spacing = {
  rowCm: number;
  plantCm: number;
  /** One, or a clump of several from one hole or one cell. */
  perStation: number;
};

/** Usual distances; together the usual 40 plants a square metre (common practice, no source). */
export const usualSpacing: Spacing = { rowCm: 25, plantCm: 10, perStation: 1 };

const cm2PerM2 = 10_000;
const cmPerM = 100;

/** Plants per m² at a spacing. */
export function plantsPerM2({ rowCm, plantCm, perStation }: Spacing): number {
  return (perStation * cm2PerM2) / (rowCm * plantCm);
}

/** The places, the row and the ground that so many plants take. */
export type Stand = { plants: number; stations: number; rowM: number; areaM2: number };

/** The places, rows and ground that so many plants take at a spacing. */
export function standOf(plants: number, spacing: Spacing): Stand {
  const stations = Math.ceil(plants / spacing.perStation);
  return {
    plants,
    stations,
    rowM: (stations * spacing.plantCm) / cmPerM,
    areaM2: plants / plantsPerM2(spacing),
  };
}

/** A bed full of plants, in rows along its longer side; half a distance stays free at each edge. */
export type FullBed = { rows: number; stationsPerRow: number; plants: number };

/** Rows and plants that fit into a bed, the rows along its longer side. */
export function fillBed(lengthM: number, widthM: number, { rowCm, plantCm, perStation }: Spacing): FullBed {
  const rows = fitting(Math.min(lengthM, widthM), rowCm);
  const stationsPerRow = fitting(Math.max(lengthM, widthM), plantCm);
  return { rows, stationsPerRow, plants: Math.round(rows * stationsPerRow * perStation) };
}

/** How often a distance goes into a length: a bed narrower than a row still has one. */
function fitting(lengthM: number, stepCm: number): number {
  // 1.2 m hold four rows of 30 cm, whatever floating point makes of it
  const hair = 1e-9;
  return Math.max(1, Math.floor((lengthM * cmPerM) / stepCm + hair));
}
