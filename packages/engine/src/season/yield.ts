import { normalCdf } from '../math/index.ts';
import { bulbMassG, marketableMinMm, plantSpreadCv } from '../plant/index.ts';
import { type Outcome, stage } from './outcome.ts';

type Grown = Pick<Outcome, 'reached' | 'bulbDryG' | 'aliveShare' | 'boltedShare'>;

// Bulb masses in a stand are log-normal: σ² = ln(1 + CV²), mean = median · e^(σ²/2).
const massVariance = Math.log(1 + plantSpreadCv ** 2);
const meanOverMedian = Math.exp(massVariance / 2);
const marketableMinG = bulbMassG(marketableMinMm);

/** Bulbs of all sizes that one season gives, fresh kg/m²; 0 where none form. */
export function totalKgM2(grown: Grown, dryMatterShare: number, densityPerM2: number): number {
  if (grown.reached < stage.onset) return 0;
  const medianG = grown.bulbDryG / dryMatterShare;
  const standing = densityPerM2 * grown.aliveShare;
  return (standing * medianG * meanOverMedian) / 1000;
}

/** Of these, bulbs of marketable size on plants that neither bolted nor died, kg/m². */
export function marketableKgM2(grown: Grown, dryMatterShare: number, densityPerM2: number): number {
  if (grown.reached < stage.onset) return 0;
  const medianG = grown.bulbDryG / dryMatterShare;
  const standing = densityPerM2 * grown.aliveShare;
  return (standing * (1 - grown.boltedShare) * medianG * meanOverMedian * shareOfMassAbove(medianG)) / 1000;
}

/** Share of a stand's mass in bulbs of marketable size. */
function shareOfMassAbove(medianG: number): number {
  if (medianG <= 0) return 0;
  return normalCdf((Math.log(medianG / marketableMinG) + massVariance) / Math.sqrt(massVariance));
}
