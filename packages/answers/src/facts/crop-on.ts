import {
  bulbDiameterMm,
  type DateSpread,
  type DayNumber,
  type DayRow,
  type SeasonSummary,
} from '@neckfall/engine';

/** How far a crop is: `ended` is a season that went by without tops going over. */
export type CropStage = 'before' | 'started' | 'leaves' | 'bulb' | 'over' | 'ended';

/** A crop on a day; leaves made so far are whole ones, the bulb is in mm across and null before there is any. */
export type CropOn = { stage: CropStage; leaves: number; acrossMm: number | null };

/** Whether a thing comes in at least every other year, so that its middle date can be told as what happens. */
export function isUsual({ share, days }: Pick<DateSpread, 'share' | 'days'>): boolean {
  return days !== null && share >= 0.5;
}

/** The middling season of a crop on one day, its turns at the dates that are told of it. `rows` are of following days. */
export function cropOn(summary: SeasonSummary, rows: readonly DayRow[], day: DayNumber): CropOn {
  const { plan, onset, neckFall } = summary;
  const last = rows.at(-1);
  const row = last && (rows[Math.min(day, last.day) - rows[0].day] ?? null);
  const leaves = row ? Math.floor(row.leavesMade) : 0;
  const acrossMm = row && row.bulbG > 0 ? bulbDiameterMm(row.bulbG) : null;
  const isFrom = (spread: Pick<DateSpread, 'share' | 'days'>) =>
    isUsual(spread) && day >= Math.round(spread.days!.p50);
  const stage = (): CropStage => {
    if (day < plan.startDay) return 'before';
    if (isFrom(neckFall)) return 'over';
    if (last && day > last.day) return last.ripening >= 1 ? 'over' : 'ended';
    if (isFrom(onset)) return 'bulb';
    return leaves >= 1 ? 'leaves' : 'started';
  };
  return { stage: stage(), leaves, acrossMm };
}
