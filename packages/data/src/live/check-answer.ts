import type { DayNumber, FoundFile } from '@neckfall/engine';
import { type AskedPoint, askedUnits, daysAhead, daysBack } from './weather-request.ts';

/** Why an answer is not the one that was asked for. */
export type AnswerRefusal =
  | { code: 'not-weather' }
  | { code: 'other-place'; latitudeDeg: number | null; longitudeDeg: number | null }
  | { code: 'other-units'; column: string; unit: string; expected: string }
  | { code: 'other-days'; from: DayNumber; to: DayNumber };

/** Grids of weather models are a quarter of a degree wide at most (memory); the answer names a point of its own. */
const nearDeg = 0.5;
/** Today there may be yesterday or tomorrow here. */
const nearDays = 1;

/**
 * Holds an answer against what was asked: the place, each column in its unit, and the days; null where it is that.
 * From the day of asking on its days are forecast.
 *
 * @param today of who asks, a day number
 */
export function checkAnswer(found: FoundFile, asked: AskedPoint, today: DayNumber): AnswerRefusal | null {
  if (found.format !== 'open-meteo-json' || found.typicalYear) return { code: 'not-weather' };
  const { latitudeDeg = null, longitudeDeg = null } = found.station ?? {};
  if (!isNear(latitudeDeg, asked.latitudeDeg) || !isNear(longitudeDeg, asked.longitudeDeg)) {
    return { code: 'other-place', latitudeDeg, longitudeDeg };
  }
  for (const { column, unit } of found.columns) {
    const expected = (askedUnits as Record<string, string>)[column];
    if (expected === undefined) return { code: 'not-weather' };
    if (unit !== expected) return { code: 'other-units', column, unit: unit ?? '', expected };
  }
  const { firstDay, days } = found.record;
  const lastDay = firstDay + days - 1;
  const isAsked =
    firstDay >= today - daysBack - nearDays &&
    lastDay < today + daysAhead + nearDays &&
    lastDay >= today - nearDays;
  return isAsked ? null : { code: 'other-days', from: firstDay, to: lastDay };
}

/** Across the date line too. */
function isNear(found: number | null, asked: number): boolean {
  if (found === null) return false;
  const apart = Math.abs(found - asked);
  return Math.min(apart, 360 - apart) <= nearDeg;
}
