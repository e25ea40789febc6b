import type { DateSpread, DayRow, SeasonSummary, Spread } from '@neckfall/engine';
import type { Quantity, Speaker } from '@neckfall/words';
import type { Frame } from '../frame.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

export function seasonText(
  frame: Frame,
  summary: SeasonSummary,
  cultivar: string | null,
  days: DayRow[] | null,
): string {
  const { speaker, label } = frame;
  const { say, reason } = speaker;
  const sections = [
    `${wrap(headline(summary, cultivar, label, speaker))}\n${wrap(reason(summary.reason))}`,
    `${say('season.table')}\n${expectations(summary, speaker)}\n${wrap(shares(summary, speaker))}`,
  ];
  const spread = plantSpread(summary, speaker);
  if (spread !== null) sections[1] += `\n${wrap(spread)}`;
  if (days) sections.push(`${say('season.days')}\n${dayTable(days, speaker)}`);
  sections.push(howWeKnow(frame, summary.plan));
  return `${sections.join('\n\n')}\n`;
}

function headline(summary: SeasonSummary, cultivar: string | null, place: string, speaker: Speaker): string {
  const { say, day, years, quantity } = speaker;
  const { plan, outcome, gamble, seasonShares, neckFall, bulbDiameterMm } = summary;
  const values = {
    place,
    crop: say(`crop.${plan.start}`, { type: cultivar ?? say(`type.${plan.type}`), date: day(plan.startDay) }),
    years: years(seasonShares[outcome]),
    neckFall: neckFall.p50 === null ? '' : day(neckFall.p50),
    diameter: bulbDiameterMm.p50 === null ? '' : quantity('bulbLength', bulbDiameterMm.p50),
  };
  if (gamble) {
    return say('season.gamble', {
      ...values,
      years: years(seasonShares.good),
      failure: say(`verdict.${outcome}`),
    });
  }
  return say(`season.${outcome}`, values);
}

function expectations(summary: SeasonSummary, speaker: Speaker): string {
  const { say } = speaker;
  const { plan } = summary;
  const rows: string[][] = [];
  const add = (title: string, cells: [string, string] | null) => {
    if (cells) rows.push([title, ...cells]);
  };
  if (plan.start !== 'bought-transplants') {
    const title = plan.start === 'sets' ? 'season.row.sprouting' : 'season.row.emergence';
    add(say(title), dateCells(summary.emergence, speaker));
  }
  if (summary.plantOut) add(say('season.row.plant-out'), dateCells(summary.plantOut, speaker));
  add(say('season.row.onset'), dateCells(summary.onset, speaker));
  if (summary.onset.sunUpH !== null) {
    add(say('season.row.day-length'), [speaker.dayLength(summary.onset.sunUpH), '']);
  }
  add(say('season.row.leaves-green'), numberCells(summary.leavesGreenAtOnset, speaker));
  add(say('season.row.neck-fall'), dateCells(summary.neckFall, speaker));
  add(say('season.row.diameter'), quantityCells('bulbLength', summary.bulbDiameterMm, speaker));
  add(say('season.row.mass'), quantityCells('bulbMass', summary.bulbMassG, speaker));
  add(say('season.row.yield'), quantityCells('yield', summary.marketableKgM2, speaker));
  add(say('season.row.bolted'), plantCells(summary.boltedPlantsShare, speaker));
  add(say('season.row.winter-killed'), plantCells(summary.winterKilledPlantsShare, speaker));
  if (plan.water === 'rain') add(say('season.row.thirsty'), numberCells(summary.thirstyDays, speaker));
  return table(
    [{ title: '' }, { title: say('season.column.likely') }, { title: say('season.column.range') }],
    rows,
  );
}

type Cells = [string, string] | null;

function dateCells({ p10, p50, p90, share }: DateSpread, { say, day, dayRange, years }: Speaker): Cells {
  if (p10 === null || p50 === null || p90 === null) return [say('never'), ''];
  const range = dayRange(p10, p90);
  return [day(p50), share < 1 ? say('season.range-some', { range, years: years(share) }) : range];
}

function numberCells({ p10, p50, p90 }: Spread, { number, numberRange }: Speaker): Cells {
  return p10 === null || p50 === null || p90 === null ? null : [number(p50), numberRange(p10, p90)];
}

function quantityCells(kind: Quantity, { p10, p50, p90 }: Spread, speaker: Speaker): Cells {
  if (p10 === null || p50 === null || p90 === null) return null;
  return [speaker.quantity(kind, p50), speaker.quantityRange(kind, p10, p90)];
}

function plantCells({ p10, p50, p90 }: Spread, { plants, numberRange, say }: Speaker): Cells {
  if (p10 === null || p50 === null || p90 === null || p90 < 0.05) return null;
  return [plants(p50), say('share.plants-range', { range: numberRange(10 * p10, 10 * p90) })];
}

function shares({ seasonShares }: SeasonSummary, { say, all, years }: Speaker): string {
  const parts = Object.entries(seasonShares)
    .filter(([, share]) => share > 0)
    .toSorted((a, b) => b[1] - a[1])
    .map(([verdict, share]) =>
      say('season.share', {
        verdict: say(`verdict.${verdict as keyof typeof seasonShares}`),
        years: years(share),
      }),
    );
  return say('season.shares', { shares: all(parts) });
}

/** Masses of plants are log-normal: two in three lie within a factor e^σ of the middle one, σ² = ln(1 + CV²). */
function plantSpread({ bulbMassG, plantSpreadCv }: SeasonSummary, speaker: Speaker): string | null {
  if (bulbMassG.p50 === null) return null;
  const factor = Math.exp(Math.sqrt(Math.log(1 + plantSpreadCv ** 2)));
  return speaker.say('season.spread', {
    middle: speaker.quantity('bulbMass', bulbMassG.p50),
    range: speaker.quantityRange('bulbMass', bulbMassG.p50 / factor, bulbMassG.p50 * factor),
  });
}

const everyDays = 7;

/** A week apart on paper; `--json` and `--csv` have every day. */
function dayTable(days: readonly DayRow[], speaker: Speaker): string {
  const { say, day, number, quantity, dayLength } = speaker;
  const titles = ['date', 'sun-up', 'mean', 'leaves', 'bulb'] as const;
  return table(
    titles.map((title) => ({ title: say(`season.day.${title}`), right: title !== 'date' })),
    days
      .filter((_, at) => at % everyDays === 0 || at === days.length - 1)
      .map((row) => [
        day(row.day),
        dayLength(row.sunUpH),
        quantity('temperature', row.tempMeanC),
        number(row.leavesGreen),
        quantity('bulbMass', row.bulbG),
      ]),
  );
}
