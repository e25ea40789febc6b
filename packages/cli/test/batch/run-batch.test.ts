import { speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Crew } from '../../src/batch/crew.ts';
import type { Row } from '../../src/batch/rows.ts';
import { runBatch } from '../../src/batch/run-batch.ts';
import type { Sink } from '../../src/output/open-sink.ts';
import { refusalOf } from '../../src/refusal/refusal.ts';

fc.configureGlobal({ seed: 20_270_503 });

const metric = speaker('metric');

/** Answers a portion some turns of the event loop later, in whatever order that makes. */
function crewTaking(turns: (portion: number) => number, failing: (row: Row) => boolean = () => false) {
  let portions = 0;
  const seen = { dismissed: false };
  const crew: Crew = {
    hands: 2,
    async answer(rows) {
      for (let turn = turns(portions++); turn > 0; turn--) await null;
      const failed = rows.filter(failing).length;
      const firstFailure = failed ? { code: 'number', field: 'latitude', message: 'no' } : null;
      return { text: rows.map(({ line }) => `${line}\n`).join(''), rows: rows.length, failed, firstFailure };
    },
    async dismiss() {
      seen.dismissed = true;
    },
  };
  return { crew, seen };
}

function memorySink(accepts = Number.POSITIVE_INFINITY) {
  const seen = { text: '', end: '' };
  const sink: Sink = {
    async write(text) {
      seen.text += text;
      return seen.text.length < accepts;
    },
    keep: () => {
      seen.end ||= 'kept';
    },
    drop: () => {
      seen.end ||= 'dropped';
    },
  };
  return { sink, seen };
}

async function* rowsUpTo(last: number, pulled = { rows: 0 }): AsyncGenerator<Row> {
  for (let line = 1; line <= last; line++) {
    pulled.rows = line;
    yield { line, cells: {}, fault: null };
  }
}

const linesUpTo = (last: number) => Array.from({ length: last }, (_, at) => `${at + 1}\n`).join('');

test('lines come in the order of the rows, whoever is done first', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.nat({ max: 30 }), { minLength: 1 }),
      fc.integer({ min: 1, max: 300 }),
      async (turns, rows) => {
        const { crew } = crewTaking((portion) => turns[portion % turns.length]);
        const { sink, seen } = memorySink();
        expect(await runBatch(rowsUpTo(rows), 'season', 'f.csv', crew, sink, metric)).toBeNull();
        expect(seen).toEqual({ text: linesUpTo(rows), end: 'kept' });
      },
    ),
    { numRuns: 100 },
  );
});

test('of 200,000 rows no more are read ahead than are in hand', async () => {
  const pulled = { rows: 0 };
  let written = 0;
  let farthest = 0;
  const { crew } = crewTaking(() => 1);
  const sink: Sink = {
    async write(text) {
      farthest = Math.max(farthest, pulled.rows - written);
      written += String(text).split('\n').length - 1;
      return true;
    },
    keep: () => {},
    drop: () => {},
  };
  await runBatch(rowsUpTo(200_000, pulled), 'season', 'f.csv', crew, sink, metric);
  expect(written).toBe(200_000);
  expect(farthest).toBeLessThanOrEqual(100);
});

describe('a batch', () => {
  test('says how many rows failed and why the first did', async () => {
    const { crew } = crewTaking(
      () => 0,
      ({ line }) => line === 3,
    );
    const { sink, seen } = memorySink();
    const warning = await runBatch(rowsUpTo(20), 'season', 'f.csv', crew, sink, metric);
    expect(warning).toBe('1 row of 20 was not answered; its line says why. The first: no');
    expect(seen.end).toBe('kept');
  });

  test('of which every row failed is refused and leaves nothing', async () => {
    const { crew, seen: team } = crewTaking(
      () => 0,
      () => true,
    );
    const { sink, seen } = memorySink();
    const refusal = refusalOf(
      await runBatch(rowsUpTo(5), 'season', 'f.csv', crew, sink, metric).catch((error) => error),
    );
    expect(refusal).toMatchObject({ code: 'batch-none-answered', exit: 3, values: { rows: 5, first: 'no' } });
    expect([seen.end, team.dismissed]).toEqual(['dropped', true]);
  });

  test('stops reading once nobody takes its lines', async () => {
    const pulled = { rows: 0 };
    const { crew, seen: team } = crewTaking(() => 0);
    const { sink, seen } = memorySink(50);
    expect(await runBatch(rowsUpTo(100_000, pulled), 'season', 'f.csv', crew, sink, metric)).toBeNull();
    expect(pulled.rows).toBeLessThan(200);
    expect([seen.end, team.dismissed]).toEqual(['dropped', true]);
  });

  test('ends with the fault of a thread, and leaves nothing', async () => {
    const { crew, seen: team } = crewTaking(() => 0);
    const breaking: Crew = {
      ...crew,
      answer: (rows) => (rows[0].line > 30 ? Promise.reject(new Error('gone')) : crew.answer(rows)),
    };
    const { sink, seen } = memorySink();
    await expect(runBatch(rowsUpTo(1000), 'season', 'f.csv', breaking, sink, metric)).rejects.toThrow('gone');
    expect([seen.end, team.dismissed]).toEqual(['dropped', true]);
  });
});
