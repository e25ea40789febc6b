import { atlasLead, atlasRows } from '@neckfall/answers';
import type { Speaker } from '@neckfall/words';
import { table } from '../text/table.ts';
import { wrap } from '../text/wrap.ts';
import { atlasGrounds } from './atlas-grounds.ts';
import { type AtlasPointRow, mapPoint } from './atlas-point.ts';
import type { AtlasSettings } from './settings.ts';

/** What stands out on a map, its bands of latitude, and what it rests on. */
export function atlasText(settings: AtlasSettings, rows: readonly AtlasPointRow[], speaker: Speaker): string {
  const { say, all } = speaker;
  if (rows.length === 0) return `${say('mapping.no-land', { step: speaker.number(settings.stepDeg, 3) })}\n`;
  const points = rows.map(mapPoint);
  const { assumed, sources } = atlasGrounds(settings, speaker);
  const lead = atlasLead(points, { shows: 'kind', class: settings.class }, speaker);
  const columns = ['band', 'kind', 'good', 'start', 'tops', 'size', 'points'] as const;
  const grounds = [...assumed, say('how.sources', { sources: all(sources) })];
  return [
    wrap(lead.join(' ')),
    '',
    say('mapping.table'),
    table(
      columns.map((column) => ({ title: say(`atlas.column.${column}`), right: column === 'points' })),
      atlasRows(points, speaker).map((row) => columns.map((column) => row[column])),
    ),
    '',
    say('how.title'),
    ...grounds.map((line) => `  ${wrap(line, 2)}`),
    '',
  ].join('\n');
}
