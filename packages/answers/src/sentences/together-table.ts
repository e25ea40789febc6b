import type { Speaker } from '@neckfall/words';
import { isUsual } from '../facts/index.ts';
import { type SetBeside, startName } from './together-line.ts';

/** All lines in numbers: the head and a row for each, the name first. */
export function togetherTable(
  lines: readonly SetBeside[],
  of: 'places' | 'starts',
  { say, ...speaker }: Speaker,
): { caption: string; head: string[]; rows: string[][] } {
  const { day, dayLength, quantity, years, number } = speaker;
  const date = (spread: Parameters<typeof isUsual>[0]) =>
    isUsual(spread) ? day(Math.round(spread.days!.p50)) : say('never');
  return {
    caption: say('together.table'),
    head: [
      say(`together.column.${of}`),
      say('together.column.onion'),
      say('together.column.begun'),
      say('together.column.longest'),
      say('together.column.shortest'),
      say('together.column.needs'),
      say('together.column.bulbs'),
      say('together.column.leaves-then'),
      say('together.column.tops'),
      say('together.column.across'),
      say('together.column.good'),
      say('together.column.coldest'),
    ],
    rows: lines.map(({ name, summary, needSunUpH, longestH, shortestH, coldestC }) => [
      name,
      say(`type.${summary.plan.type}`),
      startName(summary.plan, { say, ...speaker }),
      dayLength(longestH),
      dayLength(shortestH),
      dayLength(Math.round(needSunUpH * 4) / 4),
      date(summary.onset),
      summary.leavesMadeAtOnset ? number(Math.round(summary.leavesMadeAtOnset.p50)) : say('none'),
      date(summary.neckFall),
      summary.bulbDiameterMm ? quantity('bulbLength', summary.bulbDiameterMm.p50) : say('none'),
      years(summary.seasonShares.good, summary.years),
      quantity('temperature', coldestC),
    ]),
  };
}
