/** Days from one day of the year to the next such other, over New Year where need be. */
export function daysUntil(from: number, to: number, inYear: number): number {
  return (to - from + inYear) % inYear;
}
