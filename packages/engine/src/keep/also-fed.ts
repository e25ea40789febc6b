import { climateYearDays } from '../calendar/index.ts';
import { periodDays } from './kitchen-periods.ts';

/**
 * The periods that a plan feeds in enough years, all of them together: those it was made for, and of the gaps beside them
 * what it happens to feed too, what is fed in most years first.
 *
 * @param unfed share of the need that went unfed, by year and climate day
 */
export function alsoFed(
  unfed: Float64Array,
  required: Uint8Array,
  years: number,
  enoughYears: number,
): Uint8Array {
  const fed = Uint8Array.from(required);
  const periods = fed.length;
  const isFed = Array.from({ length: periods }, (_, at) =>
    Uint8Array.from({ length: years }, (_, year) => Number(isFedIn(unfed, year, at))),
  );
  const together = new Uint8Array(years).fill(1);
  const fedWith = (at: number) => isFed[at].reduce((sum, one, year) => sum + (one & together[year]), 0);
  const take = (at: number) =>
    isFed[at].forEach((one, year) => {
      together[year] &= one;
    });
  for (let at = 0; at < periods; at++) if (fed[at]) take(at);
  for (;;) {
    let best = -1;
    let most = enoughYears - 1;
    for (let at = 0; at < periods; at++) {
      const isBeside = fed[(at + 1) % periods] || fed[(at + periods - 1) % periods];
      if (fed[at] || !isBeside || fedWith(at) <= most) continue;
      best = at;
      most = fedWith(at);
    }
    if (best < 0) return fed;
    fed[best] = 1;
    take(best);
  }
}

function isFedIn(unfed: Float64Array, year: number, period: number): boolean {
  const to = Math.min(climateYearDays, Math.ceil((period + 1) * periodDays));
  for (let day = Math.floor(period * periodDays); day < to; day++)
    if (unfed[year * climateYearDays + day] > 0) return false;
  return true;
}
