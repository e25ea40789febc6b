import type { FoundStation } from '../found.ts';
import { cellsOf } from './cells.ts';
import type { Table } from './find-table.ts';
import { headerName } from './header-name.ts';
import { parseNumber } from './numbers.ts';

type Part = 'name' | 'latitudeDeg' | 'longitudeDeg' | 'elevationM';

function partOf(key: string): Part | null {
  const { words } = headerName(key.slice(0, 100));
  if (
    /^ (?:station |stations )?(?:lat|latitude|latitud|latitudine|breite|geogr breite|breitengrad)(?: y| deg\w*| decimal\w*| \w)? $/.test(
      words,
    )
  )
    return 'latitudeDeg';
  if (
    /^ (?:station )?(?:lon|long|longitude|longitud|longitudine|lange|geogr lange|langengrad)(?: x| deg\w*| decimal\w*| \w)? $/.test(
      words,
    )
  )
    return 'longitudeDeg';
  if (
    /^ (?:station )?(?:elev|elevation|altitude|altitud|alt|hohe|stationshohe|quota|hoogte)(?: m| meters)? $/.test(
      words,
    )
  )
    return 'elevationM';
  return /^ (?:name|station name|station|nome|nom|nombre|estacion|esta.?ao|stationsname|estacao|stazione) $/.test(
    words,
  )
    ? 'name'
    : null;
}

const limits = { latitudeDeg: 90, longitudeDeg: 180, elevationM: 9000 };

/** What the lines above a table, or its own columns, say of the station; null for nothing. */
export function stationOf(table: Table): FoundStation | null {
  const station: FoundStation = { name: null, latitudeDeg: null, longitudeDeg: null, elevationM: null };
  const put = (part: Part | null, text: string) => {
    if (part === null || text === '' || station[part] !== null) return;
    if (part === 'name') station.name = text.slice(0, 100);
    else {
      const value = parseNumber(text.replace(/[°\s]*[NSEWO]?$/i, ''), text.includes('.') ? '.' : ',');
      const isSouthOrWest = /[SW]$/i.test(text) && value > 0;
      if (Math.abs(value) <= limits[part]) station[part] = isSouthOrWest ? -value : value;
    }
  };
  const above = table.lines.slice(0, Math.max(0, table.header < 0 ? table.from : table.header)).slice(0, 60);
  for (const [at, line] of above.entries()) {
    const text = line.replace(/^[\s#%/]+/, '').slice(0, 400);
    const pair = /^"?([^:;,=\t"]{2,60})"?\s*[:;,=\t]+\s*"?([^;\t"]{1,100}?)"?[;,\s]*$/.exec(text);
    if (pair) put(partOf(pair[1]!), pair[2]!.trim());
    for (const found of text.matchAll(/\b(lat|lon|latitude|longitude)\b[\s:=]*(-?\d{1,3}\.\d+)/gi)) {
      put(partOf(found[1]!), found[2]!);
    }
    const elevation = /\belevation\b.*=\s*(-?\d+(?:\.\d+)?)/i.exec(text);
    if (elevation) put('elevationM', elevation[1]!);
    // names in one line, values in the next
    const next = above[at + 1];
    if (next === undefined) continue;
    const keys = cellsOf(line, table.delimiter);
    const parts = keys.map(partOf);
    if (!parts.includes('latitudeDeg')) continue;
    const values = cellsOf(next, table.delimiter);
    for (const [cell, part] of parts.entries()) if (keys.length > 2) put(part, values[cell] ?? '');
  }
  const first = cellsOf(table.lines[table.from] ?? '', table.delimiter);
  const columns = table.names.map(({ column }) => partOf(column));
  // a name before a number
  const named = table.names.findIndex(({ words }) => / name | nombre | nome | nom /.test(words));
  if (named >= 0) put(columns[named]!, first[named] ?? '');
  for (const [cell, part] of columns.entries()) put(part, first[cell] ?? '');
  return Object.values(station).every((value) => value === null) ? null : station;
}

/** The column that tells stations apart, where a table has several; −1 for none. */
export function stationColumn(table: Table, sample: readonly string[][]): number {
  return table.names.findIndex(({ words }, at) => {
    if (
      !/^ (?:station|stations? id|location id|site|site id|station name|name|id|code|codigo|climate id|num poste|nom usuel|usaf|device|sensor id) $/.test(
        words,
      )
    )
      return false;
    const values = new Set(sample.map((row) => row[at] ?? ''));
    return values.size > 1 && values.size <= sample.length / 4;
  });
}
