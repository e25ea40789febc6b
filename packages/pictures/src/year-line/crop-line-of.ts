import { readiness } from '@neckfall/answers';
import { bulbDiameterMm, type DayRow, type SeasonSummary, type Spread } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { CropLine, CropMark, CropMarkKind, WorkMark } from './year-line-props.ts';

/** The bulb is drawn at every fourth day. */
const bulbStepDays = 4;
/** Two marks nearer than this are one, days. */
const togetherDays = 3;

/** Green leaves counted on a day. */
export type LeafCount = { day: number; leaves: number };

/** A crop for the year line, from what many years say (dates) and the median season's days (steps). */
export function cropLineOf(
  summary: SeasonSummary,
  rows: readonly DayRow[],
  speaker: Speaker,
  counts: readonly LeafCount[] = [],
  work: readonly WorkMark[] = [],
): CropLine {
  const leaves = stepsOf(rows);
  const leavesMade = summary.leavesMadeAtOnset;
  const made = rows.findIndex(({ bulbing }) => bulbing >= 1);
  const atBulbs = rows[made >= 0 ? made : rows.length - 1];
  const bulb = rows
    .filter(({ bulbG }, i) => bulbG > 0 && (i % bulbStepDays === 0 || i === rows.length - 1))
    .map(({ day, bulbG }) => ({ day, acrossMm: bulbDiameterMm(bulbG) }));
  const last = rows.at(-1);
  return {
    leaves,
    leavesText:
      atBulbs && leavesMade !== null
        ? { day: atBulbs.day, text: speaker.say('picture.leaves', { count: Math.round(leavesMade.p50) }) }
        : null,
    bulb,
    topsOver: last && last.ripening >= 1 ? last.day : null,
    counted: counts.flatMap((count) => countedOf(count, rows, speaker) ?? []),
    marks: marksOf(summary, rows, speaker),
    work,
  };
}

/** Leaves that have withered by then are no longer counted, and stay in the steps. */
function countedOf({ day, leaves }: LeafCount, rows: readonly DayRow[], speaker: Speaker) {
  const row = rows.find((row) => row.day === day);
  if (!row) return null;
  const text = speaker.say('app.seen.mark', {
    date: speaker.day(day),
    count: leaves,
    value: speaker.number(leaves, 1),
  });
  return { day, made: leaves + row.leavesMade - row.leavesGreen, text };
}

/** The day of each further whole leaf. */
function stepsOf(rows: readonly DayRow[]): CropLine['leaves'] {
  const steps: CropLine['leaves'] = [];
  for (const { day, leavesMade } of rows) {
    const made = Math.floor(leavesMade);
    if (made > (steps.at(-1)?.made ?? 0)) steps.push({ day, made });
  }
  const last = rows.at(-1);
  if (last && steps.length > 0) steps.push({ day: last.day, made: steps[steps.length - 1].made });
  return steps;
}

function marksOf(summary: SeasonSummary, rows: readonly DayRow[], speaker: Speaker): CropMark[] {
  const { plan, plantOut, onset, neckFall } = summary;
  const marks: CropMark[] = [];
  const add = (
    kind: CropMarkKind,
    key: Parameters<Speaker['say']>[0],
    day: number,
    span: CropMark['span'] = null,
  ) => marks.push({ kind, day, text: speaker.say(key, { date: speaker.day(day) }), span });
  add('start', `picture.mark.${plan.start}`, plan.startDay);
  if (plantOut?.days) add('out', 'picture.mark.out', Math.round(plantOut.days.p50));
  const { long, big } = readiness(rows, summary.needPhotoperiodH);
  if (long !== null && big !== null && big - long <= togetherDays) add('big', 'picture.mark.ready', big);
  else {
    if (long !== null) add('long', 'picture.mark.long', long);
    if (big !== null) add('big', 'picture.mark.big', big);
  }
  if (onset.days) add('bulbs', 'picture.mark.bulbs', Math.round(onset.days.p50), spanOf(onset.days));
  if (neckFall.days) add('tops', 'picture.mark.tops', Math.round(neckFall.days.p50), spanOf(neckFall.days));
  return marks;
}

function spanOf({ p10, p90 }: Spread): CropMark['span'] {
  return { from: Math.round(p10), to: Math.round(p90) };
}
