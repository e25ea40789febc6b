import { afterEach, describe, expect, test, vi } from 'vitest';
import { openLine } from '../../src/ask/line.ts';
import type { FromWorker, Handler, ToWorker } from '../../src/worker/protocol.ts';

type Work = { square: Handler<number, number, string>; other: Handler<number, number> };

/** A worker that answers when the test tells it to. */
function fakeWorker() {
  const got: ToWorker[] = [];
  const worker = {
    postMessage: (message: ToWorker) => got.push(message),
    terminate: vi.fn(),
    onmessage: null as null | ((event: { data: FromWorker }) => void),
    onerror: null as null | ((event: { message: string; preventDefault: () => void }) => void),
  };
  return { worker, got, tell: (data: FromWorker) => worker.onmessage?.({ data }) };
}

function open() {
  const fake = fakeWorker();
  const opens = vi.fn(() => fake.worker as unknown as Worker);
  return { ...fake, opens, line: openLine<Work>(opens) };
}

afterEach(() => vi.restoreAllMocks());

describe('a line to a worker', () => {
  test('opens it with the first request only', () => {
    const { line, opens } = open();
    expect(opens).not.toHaveBeenCalled();
    void line.ask('square', 1);
    void line.ask('other', 1);
    expect(opens).toHaveBeenCalledTimes(1);
  });

  test('gives each request its own answer, in whatever order they come', async () => {
    const { line, tell } = open();
    const square = line.ask('square', 3);
    const other = line.ask('other', 4);
    tell({ id: 2, done: 4 });
    tell({ id: 1, done: 9 });
    expect(await square).toEqual({ state: 'done', answer: 9 });
    expect(await other).toEqual({ state: 'done', answer: 4 });
  });

  test('lets only the last of many requests wait: those between are overtaken and never sent', async () => {
    const { line, got, tell } = open();
    const replies = [1, 2, 3, 4].map((n) => line.ask('square', n));
    expect(got.filter((message) => 'id' in message)).toHaveLength(1);
    tell({ id: 1, done: 1 });
    expect(got.filter((message) => 'id' in message)).toEqual([
      { id: 1, kind: 'square', request: 1 },
      { id: 2, kind: 'square', request: 4 },
    ]);
    tell({ id: 2, done: 16 });
    expect(await Promise.all(replies)).toEqual([
      { state: 'overtaken' },
      { state: 'overtaken' },
      { state: 'overtaken' },
      { state: 'done', answer: 16 },
    ]);
  });

  test('calls off the request at work when a newer one comes, and goes on once the worker has left it', async () => {
    const { line, got, tell } = open();
    const first = line.ask('square', 1);
    const second = line.ask('square', 2);
    expect(got).toContainEqual({ cancel: 1 });
    tell({ id: 1, left: true });
    tell({ id: 2, done: 4 });
    expect(await first).toEqual({ state: 'overtaken' });
    expect(await second).toEqual({ state: 'done', answer: 4 });
  });

  test('hands out live answers although a newer request waits', async () => {
    const { line, got, tell } = open();
    const first = line.ask('square', 1, { live: true });
    const second = line.ask('square', 2, { live: true });
    expect(got).not.toContainEqual({ cancel: 1 });
    tell({ id: 1, done: 1 });
    tell({ id: 2, done: 4 });
    expect(await first).toEqual({ state: 'done', answer: 1 });
    expect(await second).toEqual({ state: 'done', answer: 4 });
  });

  test('hands on what is known so far, but not of a request that was overtaken or dropped', async () => {
    const { line, tell } = open();
    const parts: string[] = [];
    const part = (text: string) => parts.push(text);
    void line.ask('square', 1, { part });
    tell({ id: 1, part: 'first' });
    const second = line.ask('square', 2, { part });
    tell({ id: 1, part: 'too late' });
    tell({ id: 1, done: 1 });
    line.cancel('square');
    tell({ id: 2, part: 'dropped' });
    tell({ id: 2, done: 4 });
    expect(await second).toEqual({ state: 'overtaken' });
    expect(parts).toEqual(['first']);
  });

  test('tells all that wait when the worker fails, and opens another for the next', async () => {
    const { line, worker, opens, tell } = open();
    const first = line.ask('square', 1);
    const second = line.ask('square', 2);
    worker.onerror?.({ message: 'no such file', preventDefault: () => {} });
    expect(await first).toEqual({ state: 'failed', message: 'no such file' });
    expect(await second).toEqual({ state: 'failed', message: 'no such file' });
    const third = line.ask('square', 3);
    expect(opens).toHaveBeenCalledTimes(2);
    tell({ id: 2, done: 9 });
    expect(await third).toEqual({ state: 'done', answer: 9 });
  });

  test('tells a fault inside the work to its asker only', async () => {
    const { line, tell } = open();
    const square = line.ask('square', 1);
    const other = line.ask('other', 1);
    tell({ id: 1, failed: 'latitude 99' });
    tell({ id: 2, done: 1 });
    expect(await square).toEqual({ state: 'failed', message: 'latitude 99' });
    expect(await other).toEqual({ state: 'done', answer: 1 });
  });
});
