import { practiceNear } from '../../packages/data/src/index.ts';
import { publishedPractice } from '../../packages/data/src/node.ts';
import type { Site } from '../../packages/engine/src/index.ts';
import { unseenValues } from '../calibrate/fold-values.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import { advisedRows, bestDateMiss, leadAt, placesOf } from '../score/leads.ts';
import { type ScorePlace, scoreSite } from '../score/sites.ts';
import type { LeadChecks } from './lead-pages.ts';

/** Advice at the places of the calendars, each by parameters that never saw its neighbourhood. */
export function leadChecks(rows: readonly CalendarRow[]): LeadChecks {
  const full = advisedRows(rows);
  return {
    dates: full.map((row) => {
      const { alone, withPractice } = sitesOf(row);
      return {
        id: row.id,
        alone: bestDateMiss(row, full, alone),
        withPractice: bestDateMiss(row, full, withPractice),
      };
    }),
    leads: placesOf(rows).map((place) => {
      const { alone, withPractice } = sitesOf(place);
      const { lead, used } = leadAt(place, alone);
      return { place: place.name, alone: lead, withPractice: leadAt(place, withPractice).lead, used };
    }),
  };
}

function sitesOf(at: ScorePlace): { alone: Site; withPractice: Site } {
  const alone = scoreSite(at, unseenValues(at.latitudeDeg, at.longitudeDeg));
  return {
    alone,
    withPractice: {
      ...alone,
      practice: practiceNear(publishedPractice, alone.climate),
      referenceG: new Map(),
    },
  };
}
