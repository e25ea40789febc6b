import { type DateSpread, type SeasonSummary, type Spread, startWays } from '@neckfall/engine';
import type { MessageKey, Quantity, Speaker } from '@neckfall/words';

/** A line of what to expect: the middle, and where it lies in 8 years of 10 ('' where there is no span). */
export type SeasonRow = { key: SeasonRowKey; title: string; middle: string; range: string };
export type SeasonRowKey = Extract<MessageKey, `season.row.${string}`>;

type Cells = [middle: string, range: string] | null;

/** Dates and figures of a crop, in the order of the season. */
export function seasonRows(summary: SeasonSummary, speaker: Speaker): SeasonRow[] {
  const { plan } = summary;
  const rows: SeasonRow[] = [];
  const add = (key: SeasonRowKey, cells: Cells) => {
    if (cells) rows.push({ key, title: speaker.say(key), middle: cells[0], range: cells[1] });
  };
  const { comesUp } = startWays[plan.start];
  if (comesUp) add(`season.row.${comesUp}`, dateCells(summary.emergence, speaker));
  if (summary.plantOut) add('season.row.plant-out', dateCells(summary.plantOut, speaker));
  add('season.row.onset', dateCells(summary.onset, speaker));
  const { days } = summary.onset;
  add('season.row.day-length', days && [speaker.dayLength(days.sunUpH), '']);
  add('season.row.leaves-green', numberCells(summary.leavesGreenAtOnset, speaker));
  add('season.row.neck-fall', dateCells(summary.neckFall, speaker));
  add('season.row.diameter', quantityCells('bulbLength', summary.bulbDiameterMm, speaker));
  add('season.row.mass', quantityCells('bulbMass', summary.bulbMassG, speaker));
  add('season.row.yield', quantityCells('yield', summary.marketableKgM2, speaker));
  add('season.row.bolted', plantCells(summary.boltedPlantsShare, speaker));
  add('season.row.winter-killed', plantCells(summary.winterKilledPlantsShare, speaker));
  if (plan.water === 'rain') add('season.row.thirsty', numberCells(summary.thirstyDays, speaker));
  return rows;
}

function dateCells({ days, share }: DateSpread, { say, day, dayRange, years }: Speaker): Cells {
  if (days === null) return [say('never'), ''];
  const range = dayRange(days.p10, days.p90);
  return [day(days.p50), share < 1 ? say('season.range-some', { range, years: years(share, null) }) : range];
}

function numberCells(of: Spread | null, { number, numberRange }: Speaker): Cells {
  return of && [number(of.p50), numberRange(of.p10, of.p90)];
}

function quantityCells(kind: Quantity, of: Spread | null, { quantity, quantityRange }: Speaker): Cells {
  return of && [quantity(kind, of.p50), quantityRange(kind, of.p10, of.p90)];
}

function plantCells(of: Spread | null, { plants, numberRange, say }: Speaker): Cells {
  if (of === null || of.p90 < 0.05) return null;
  return [plants(of.p50), say('share.plants-range', { range: numberRange(10 * of.p10, 10 * of.p90) })];
}
