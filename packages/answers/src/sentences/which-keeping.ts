import type { Kind, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

const daysAMonth = 365.25 / 12;

/** How many months an onion keeps, and until when if its tops go over on the middle date. */
export function keepingWords(
  { kind, summary }: { kind: Pick<Kind, 'keepsMonths'>; summary: SeasonSummary },
  { say, day, numberRange }: Speaker,
): string {
  const { days } = summary.neckFall;
  const [least, most] = kind.keepsMonths;
  const months = numberRange(least, most, 1);
  if (days === null) return say('cultivars.months', { range: months });
  return say('which.keeps-until', { months, date: day(days.p50 + least * daysAMonth) });
}
