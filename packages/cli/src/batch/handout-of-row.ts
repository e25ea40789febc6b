import { handoutAnswer, type RawHandout } from '../answer/handout-answer.ts';
import type { OpenFrame } from '../frame/frame.ts';
import { readSheet } from '../options/handout-options.ts';
import type { PlaceOptions, Setting } from '../options/place-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import type { SheetAsked } from '../print/write-sheet.ts';
import { refuse } from '../refusal/refusal.ts';
import { pointOfRow } from './point-of-row.ts';
import type { Row } from './rows.ts';

/** A row's sheet, and what its files are called after. */
export type SheetOfRow = { called: string; sheet: SheetAsked };

/** Columns come before the options of the command, which hold for every row that says nothing else. */
export function handoutOfRow(
  cells: Row['cells'],
  raw: RawHandout,
  setting: Setting,
  open: OpenFrame,
): SheetOfRow {
  const { units = raw.units, lang = raw.lang } = cells;
  const speaker = speakerFor({ ...(units !== undefined && { units }), ...(lang !== undefined && { lang }) });
  const asked = placeOfRow(cells);
  const said = readSheet(
    {
      heading: cells.heading ?? raw.heading,
      note: cells.note ?? raw.note,
      paper: cells.paper ?? raw.paper,
    },
    speaker.units,
    speaker,
    (name) => name,
  );
  const label = cells.name ?? null;
  const { frame, sheet } = handoutAnswer({ asked, ...setting }, { ...said, label }, speaker, open);
  return { called: cells.id ?? cells.place ?? label ?? frame.label, sheet };
}

function placeOfRow(cells: Row['cells']): PlaceOptions['asked'] {
  if (cells.place !== undefined) return { town: cells.place };
  if (cells.latitude === undefined && cells.longitude === undefined)
    throw refuse('row-no-place', { field: 'place' });
  return pointOfRow(cells);
}
