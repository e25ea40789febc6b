// Soil temperature (°C) and share of normal seedlings, seed 13 mm deep.
// Source: Harrington & Minges 1954, California Agricultural Extension leaflet, via Knott's Handbook.
const soilC = [0, 5, 10, 15, 20, 25, 30, 35, 40] as const;
const normalShare = [0.9, 0.98, 0.98, 0.98, 0.99, 0.97, 0.91, 0.73, 0.02] as const;

/** Share of good seeds that give normal seedlings at a soil temperature, °C. */
export function normalSeedlingShare(soilTempC: number): number {
  if (soilTempC <= soilC[0]) return normalShare[0];
  for (let i = 1; i < soilC.length; i++) {
    if (soilTempC <= soilC[i]) {
      const share = (soilTempC - soilC[i - 1]) / (soilC[i] - soilC[i - 1]);
      return normalShare[i - 1] + (normalShare[i] - normalShare[i - 1]) * share;
    }
  }
  return normalShare[8];
}

/**
 * Share of good seeds lost in the bed to crusting, pests and uneven depth; handbooks give a field factor of
 * 0.5–0.8 (memory: UK handbook field factors). Trays are kinder.
 */
export const fieldFactor = { bed: 0.75, tray: 0.9 } as const;
