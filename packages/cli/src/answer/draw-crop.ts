import { seasonHeadline, startsYearFirst, whenHeadline } from '@neckfall/answers';
import { cultivars } from '@neckfall/data';
import { type Plan, runPlan, tryStarts, waysOf } from '@neckfall/engine';
import { SectionRow, StartHills, sectionOf, startHillsOf, startHillsTableOf } from '@neckfall/pictures';
import { yearOf } from '../documents/values.ts';
import type { Frame } from '../frame/frame.ts';
import type { AskedOnion } from '../options/onion-options.ts';
import type { Practice } from '../options/plan-options.ts';
import { type PictureAnswer, pictureWidth } from './picture-answer.ts';

/** The bulbs of a crop cut through, in a poor, the middle and a good year, as the page Season has them. */
export function drawBulbs(frame: Frame, plan: Plan, cultivar: string | null): PictureAnswer {
  const { site, label, speaker } = frame;
  const summary = runPlan(site, plan);
  const known = cultivars.find(({ name }) => name === cultivar);
  const look = { colour: known?.colour ?? 'yellow', shape: known?.shape ?? 'globe' } as const;
  const { picture, table } = sectionOf(summary, look, speaker);
  return {
    frame,
    title: seasonHeadline(summary, cultivar, label, speaker),
    drawn: SectionRow({ width: pictureWidth, ...picture }),
    summary: picture.summary,
    note: null,
    table,
    numbers: null,
  };
}

/** What comes of a start in every week of the year, as `when` and the page When have it. */
export function drawStarts(frame: Frame, onion: AskedOnion, practice: Practice): PictureAnswer {
  const { site, label, options, speaker } = frame;
  const { today, sunHours } = options;
  const ways = waysOf(site, onion.cropIn(yearOf(today)), [practice.start]);
  const answer = tryStarts(site, ways, { ...practice, sunHours }, today);
  const starts = { answer, firstDay: startsYearFirst(answer, today), today, chosen: null, speaker };
  const hills = startHillsOf(starts);
  return {
    frame,
    title: whenHeadline(answer, onion.name, label, speaker),
    drawn: StartHills({ id: 'starts', width: pictureWidth, ...hills }),
    summary: hills.summary,
    note: null,
    table: startHillsTableOf(starts),
    numbers: null,
  };
}
