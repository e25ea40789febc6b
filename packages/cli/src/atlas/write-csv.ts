import { csv } from '../output/csv.ts';
import type { AtlasPointRow, AtlasRow } from './atlas-point.ts';
import type { AtlasWriter } from './writers.ts';

/** The map as a table: a row a point, or a row for each kind and way of a point where all were asked for. */
export const csvWriter: AtlasWriter = {
  *texts(_, tiles) {
    let isFirst = true;
    for (const points of tiles) {
      const rows = points.flatMap(rowsOf);
      if (rows.length === 0) continue;
      const text = csv(rows);
      yield isFirst ? text : text.slice(text.indexOf('\r\n') + 2);
      isFirst = false;
    }
  },
};

function rowsOf({ entries, latitudeDeg, longitudeDeg, elevationM, ...lead }: AtlasPointRow) {
  const row = (entry: AtlasRow) => ({ latitudeDeg, longitudeDeg, elevationM, ...entry });
  return entries ? entries.map((entry) => ({ ...row(entry), leads: isSame(entry, lead) })) : [row(lead)];
}

function isSame(a: AtlasRow, b: AtlasRow): boolean {
  return a.class === b.class && a.start === b.start;
}
