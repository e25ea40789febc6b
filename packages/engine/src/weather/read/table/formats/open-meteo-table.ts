import type { FoundFile, WeatherFormatReader } from '../../found.ts';
import { joinRecords } from '../../join-records.ts';
import type { HeaderName } from '../header-name.ts';
import { headerName } from '../header-name.ts';
import { type Meaning, meaningOf } from '../meaning.ts';
import type { TableProfile } from '../profile.ts';
import { readTable } from '../read-table.ts';
import { stationOf } from '../station.ts';
import { headOf } from './header-line.ts';

/** By the beginning of a name; where several models were asked, theirs stand behind. */
const quantities: readonly [RegExp, Pick<Meaning, 'as' | 'rank'> | null][] = [
  [/^temperature_2m_max/, { as: 'tempMaxC', rank: 9 }],
  [/^temperature_2m_min/, { as: 'tempMinC', rank: 9 }],
  [/^temperature_2m(?: |\(|$|_mean|_[a-z]+\d)/, { as: 'tempC', rank: 9 }],
  [/^precipitation(?:_sum)?(?: |\(|$|_(?!prob|hours))/, { as: 'rainMm', rank: 9 }],
  [/^rain(?:_sum)?(?: |\(|$)/, { as: 'rainMm', rank: 7 }],
  [/^shortwave_radiation_sum/, { as: 'solarMJ', rank: 9 }],
  [/^shortwave_radiation(?: |\(|$)/, { as: 'solarW', rank: 9 }],
];

function meaning(name: HeaderName): Meaning | null {
  const known = quantities.find(([pattern]) => pattern.test(name.column))?.[1] ?? null;
  return known === null ? null : { ...known, unit: meaningOf(name)?.unit ?? name.unit };
}

const places = /^\s*"?(?:location_id,)?latitude"?,"?longitude"?,"?elevation"?,"?utc_offset_seconds/;

export const openMeteoTable: WeatherFormatReader = {
  format: 'open-meteo-table',
  knows: (text) =>
    places.test(headOf(text)) ||
    /^\s*(?:location_id,)?time,(?:temperature_2m|precipitation)/.test(headOf(text)),
  read: (file, corrections, place) => {
    const blocks = file.text.replace(/^\uFEFF/, '').split(/(?:\r?\n[ \t]*){2,}/);
    const head = places.test(blocks[0]!) ? blocks[0]!.split(/\r?\n/) : null;
    const keys = head?.[0]?.split(',') ?? [];
    const values = head?.[1]?.split(',') ?? [];
    const offsetMinutes = Number(values[keys.indexOf('utc_offset_seconds')] ?? 0) / 60 || 0;
    const station =
      head === null
        ? undefined
        : stationOf({
            lines: head,
            delimiter: ',',
            names: keys.map(headerName),
            header: 0,
            from: 1,
          });
    const profile: TableProfile = {
      format: 'open-meteo-table',
      timeBase: 'as-printed',
      fileOffsetMinutes: offsetMinutes,
      meaning,
      ...(station ? { station } : {}),
    };
    let joined: FoundFile | null = null;
    for (const text of head === null ? blocks : blocks.slice(1)) {
      if (text.trim() === '') continue;
      const reading = readTable({ ...file, text }, corrections, place, profile);
      if (!reading.ok) {
        // of hours and days one may hold nothing of use
        if (reading.issue.code === 'no-values' && blocks.length > 2) continue;
        return reading;
      }
      joined = joined === null ? reading.found : both(joined, reading.found);
    }
    if (joined !== null) return { ok: true, found: joined };
    const expected = 'temperature_2m, temperature_2m_max, temperature_2m_min or precipitation';
    return { ok: false, issue: { code: 'no-values', line: null, field: 'time', received: '', expected } };
  },
};

/** Hours and days of one file: what the service made of a day stands before what we make of its hours. */
function both(a: FoundFile, b: FoundFile): FoundFile {
  const isDaily =
    b.columns.some(({ as }) => as === 'tempMaxC' || as === 'tempMinC') || b.record.days === b.daysWithRow;
  const [under, over] = isDaily ? [a, b] : [b, a];
  return {
    ...over,
    columns: [...under.columns, ...over.columns.filter(({ as }) => as !== 'date')],
    unused: [...under.unused, ...over.unused],
    missingCodes: [...under.missingCodes, ...over.missingCodes],
    record: joinRecords(under.record, over.record),
    daysWithRow: Math.max(under.daysWithRow, over.daysWithRow),
    flagged: [...under.flagged, ...over.flagged].slice(0, 100),
    flaggedCount: under.flaggedCount + over.flaggedCount,
  };
}
