/**
 * What a soil's pH asks for. Onions like 6.0–7.0 (Minnesota) or 5.5–6.5 (Limpopo): between the two lower ends only the
 * first asks for lime, between the upper ends neither. How much lime follows from the soil as well; none of our sources
 * has a table of it.
 */
export type LimeAdvice = 'lime' | 'lime-perhaps' | 'fits' | 'no-lime';

const lowestAnywhere = 5.5;
const lowestUsual = 6;
const highest = 7;

/** What a soil's pH asks for; see {@link LimeAdvice} for the limits and their sources. */
export function limeAdvice(soilPh: number): LimeAdvice {
  if (soilPh < lowestAnywhere) return 'lime';
  if (soilPh < lowestUsual) return 'lime-perhaps';
  return soilPh <= highest ? 'fits' : 'no-lime';
}
