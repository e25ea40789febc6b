import { formatDay, sowingFor } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Answer } from '../answer/answer.ts';
import { type RawSeason, seasonAnswer } from '../answer/season-answer.ts';
import { yearOf } from '../documents/values.ts';
import type { OpenFrame } from '../frame/frame.ts';
import { readOnion } from '../options/onion-options.ts';
import { type PlaceOptions, readSun, type Setting } from '../options/place-options.ts';
import { readPractice, withoutOthers } from '../options/plan-options.ts';
import { dateLimits, parseDate } from '../values/date.ts';
import { optionColumns } from './columns.ts';
import { pointOfRow } from './point-of-row.ts';
import type { Row } from './rows.ts';

/** A row read as the command's own options; what it leaves out is as on the command line. */
export function seasonOfRow(
  cells: Row['cells'],
  common: RawSeason,
  setting: Setting,
  metric: Speaker,
  open: OpenFrame,
): Answer {
  const raw = rawOf(cells, common);
  const options = { ...setting, asked: pointOfRow(cells), sunHours: readSun(raw.sun) };
  const { date, plantOut, start } = raw;
  if (date === undefined && plantOut !== undefined && start?.trim().toLowerCase() === 'raised-seedlings') {
    return seasonAnswer(
      options,
      { ...raw, ...sownInTime(plantOut, raw, options, metric, open) },
      metric,
      open,
    );
  }
  return seasonAnswer(options, raw, metric, open);
}

function rawOf(cells: Row['cells'], common: RawSeason): RawSeason {
  const raw = withoutOthers(common, cells.start ?? common.start);
  // a row's own onion takes the place of the one common to all
  if (cells.class !== undefined) delete raw.cultivar;
  if (cells.cultivar !== undefined) {
    delete raw.class;
    delete raw.packetHours;
    delete raw.packetDays;
  }
  for (const [column, { option }] of optionColumns) {
    if (cells[column] !== undefined) Object.assign(raw, { [option]: cells[column] });
  }
  return raw;
}

/** Both days of own seedlings of which only the planting out is given. */
function sownInTime(
  plantOut: string,
  raw: RawSeason,
  options: PlaceOptions,
  metric: Speaker,
  open: OpenFrame,
): Pick<RawSeason, 'date' | 'plantOut'> {
  const day = parseDate(plantOut, '--plant-out', options.today, dateLimits(options.today));
  const onion = readOnion(raw, metric);
  const practice = readPractice(raw, metric);
  const { site } = open(options, metric);
  const { type, traits } = onion.plantAt(site, yearOf(day));
  const plan = {
    ...practice,
    sunHours: options.sunHours,
    type,
    traits,
    startDay: day,
    plantOutDay: null,
  };
  return { date: formatDay(sowingFor(site, plan, day)), plantOut: formatDay(day) };
}
