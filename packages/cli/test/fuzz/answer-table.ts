import { speaker } from '@neckfall/words';
import { openRows } from '../../src/batch/open-rows.ts';
import { ownCrew } from '../../src/batch/own-crew.ts';
import { runBatch } from '../../src/batch/run-batch.ts';
import { refusalOf } from '../../src/refusal/refusal.ts';
import { refusalLine } from '../../src/refusal/refusal-line.ts';
import { inPieces, type Table } from './tables.ts';

const metric = speaker('metric');
const setting = { sunHours: null, warmerC: null, weather: null, years: 1, seed: 1, today: 20_941 };
const crew = ownCrew({ command: 'season', raw: {}, setting });

/** Answers a table in this process; the result says what is wrong with the way it was done, or null. */
export async function misbehaviourWith(
  table: Table,
  seen: { lines: number; refused: number },
): Promise<string | null> {
  let text = '';
  const sink = {
    async write(lines: string) {
      text += lines;
      return true;
    },
    keep: () => {},
    drop: () => {},
  };
  try {
    await runBatch(
      openRows('table.csv', 'season', metric, inPieces(table)),
      'season',
      'table.csv',
      crew,
      sink,
      metric,
    );
  } catch (error) {
    const refusal = refusalOf(error);
    if (!refusal) return `thrown: ${error instanceof Error ? error.stack : error}`;
    if (refusal.exit !== 3 || !refusal.code.startsWith('batch-')) return `refused with ${refusal.code}`;
    const line = refusalLine(refusal, metric);
    if (line === '' || line.includes('\n')) return `no line: ${line}`;
    seen.refused++;
  }
  if (text !== '' && !text.endsWith('\n')) return `half a line at the end of ${text}`;
  for (const line of text.split('\n').slice(0, -1)) {
    const { id, schema, error } = JSON.parse(line);
    seen.lines++;
    if (typeof id !== 'string' && typeof id !== 'number') return `no id in ${line}`;
    if (error ? error.code === 'internal' || error.message === '' : schema !== 'neckfall/season@1')
      return line;
    if (!error && /NaN|undefined|Infinity/.test(line.replace(JSON.stringify(id), '')))
      return `nonsense in ${line}`;
  }
  return null;
}
