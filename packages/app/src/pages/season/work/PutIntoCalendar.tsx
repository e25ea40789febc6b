import type { SeasonAhead } from '../../../worker/season-ahead.ts';
export function PutIntoCalendar({ ahead }: { ahead: SeasonAhead }) {
  return null;
}
