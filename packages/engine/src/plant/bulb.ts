/** Fresh mass of a globe, g = 0.50 g cm⁻³ × diameter³. Derived from seen samples (50.0 mm ↔ 69.3 g; 56.7 mm ↔ 74.5 g). */
const massPerCubicCm = 0.5;

/** Equatorial diameter of a globe of a fresh mass, mm. */
export function bulbDiameterMm(massG: number): number {
  return 10 * Math.cbrt(massG / massPerCubicCm);
}

/** Fresh mass of a globe of a diameter, g. */
export function bulbMassG(diameterMm: number): number {
  return massPerCubicCm * (diameterMm / 10) ** 3;
}

/** Spread of bulb mass between plants, coefficient of variation (memory: 30–40 % hybrids, 40–50 % open-pollinated). */
export const plantSpreadCv = 0.4;

/** Smallest bulb that counts as marketable, mm (7 CFR 51.2832: 1½ in unless stated otherwise). */
export const marketableMinMm = 38;
