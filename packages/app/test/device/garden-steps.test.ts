import { emptyGarden, type Garden } from '@neckfall/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { memoryShelf } from '../../src/device/box.ts';
import {
  begin,
  empty,
  letGoOldest,
  mostSteps,
  putStep,
  type Standing,
  standing,
  walk,
} from '../../src/device/garden-steps.ts';

const gardenOf = (keeper: number): Garden => ({ ...emptyGarden(), keeper });
const keeperOf = ({ garden }: Standing) => garden?.keeper ?? null;

type Move = { put: number } | 'back' | 'on';

const moves = fc.array<Move>(
  fc.oneof(
    fc.nat(999).map((put) => ({ put })),
    fc.constantFrom('back', 'on'),
  ),
  { maxLength: 90, size: 'max' },
);

test('goes back and on as a plain list of all that was kept would', async () => {
  await fc.assert(
    fc.asyncProperty(moves, async (all) => {
      const shelf = memoryShelf();
      // the naive way: everything in one list, and a finger on it
      let list: (number | null)[] = [null];
      let at = 0;
      for (const move of all) {
        let now: Standing;
        if (move === 'back') {
          at = Math.max(0, at - 1);
          now = await shelf('readwrite', (box) => walk(box, -1));
        } else if (move === 'on') {
          at = Math.min(list.length - 1, at + 1);
          now = await shelf('readwrite', (box) => walk(box, 1));
        } else {
          list = [...list.slice(0, at + 1), move.put].slice(-mostSteps);
          at = list.length - 1;
          const step = { code: 'changed', name: String(move.put) } as const;
          now = await shelf('readwrite', (box) => putStep(box, step, () => gardenOf(move.put)));
        }
        expect(keeperOf(now)).toBe(list[at]);
        expect(now.undo?.name ?? null).toBe(at > 0 ? String(list[at]) : null);
        expect(now.redo?.name ?? null).toBe(at < list.length - 1 ? String(list[at + 1]) : null);
        expect(now).toEqual(await shelf('readonly', standing));
      }
    }),
    { seed: 20270620, numRuns: 60 },
  );
});

test('a change is made to what stands, and keeps the name of the file', async () => {
  const shelf = memoryShelf();
  const step = { code: 'opened', name: 'bank.neckfall.json' } as const;
  await shelf('readwrite', (box) => putStep(box, step, () => gardenOf(1), 'bank.neckfall.json'));
  const changes = [1, 2, 3].map((more) =>
    shelf('readwrite', (box) =>
      putStep(box, { code: 'changed', name: '' }, (now) => gardenOf(Number(now?.keeper) + more)),
    ),
  );
  await Promise.all(changes);
  expect(await shelf('readonly', standing)).toMatchObject({
    garden: { keeper: 7 },
    file: 'bank.neckfall.json',
  });
});

test('a garden from elsewhere is a beginning that nothing goes behind', async () => {
  const shelf = memoryShelf();
  await shelf('readwrite', (box) => begin(box, gardenOf(4), 'a.neckfall.json'));
  const now = await shelf('readwrite', (box) => walk(box, -1));
  expect({ keeper: keeperOf(now), undo: now.undo }).toEqual({ keeper: 4, undo: null });
});

test('emptied, nothing is left of it', async () => {
  const shelf = memoryShelf();
  await shelf('readwrite', (box) => putStep(box, { code: 'added', name: '' }, () => gardenOf(1)));
  const now = await shelf('readwrite', empty);
  expect(now).toEqual({ garden: null, file: null, undo: null, redo: null, mended: [] });
  expect(await shelf('readonly', (box) => box.keys())).toEqual([]);
});

test('whatever lies in the box, it is read for what it is worth', async () => {
  const odd = fc.oneof(
    fc.jsonValue(),
    fc.record({ garden: fc.jsonValue(), file: fc.jsonValue(), step: fc.jsonValue() }, { requiredKeys: [] }),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(odd, { maxLength: 4 }), odd, async (records, at) => {
      const shelf = memoryShelf();
      await shelf('readwrite', async (box) => {
        for (const [number, record] of records.entries()) await box.put(number, record);
        await box.put('at', at);
      });
      const now = await shelf('readonly', standing);
      expect(now.file === null || typeof now.file === 'string').toBe(true);
      const next = await shelf('readwrite', (box) =>
        putStep(box, { code: 'added', name: 'x' }, (held) => ({ ...(held ?? emptyGarden()), keeper: 5 })),
      );
      expect(next).toMatchObject({ garden: { keeper: 5 }, undo: { code: 'added' }, mended: [] });
    }),
    { seed: 20270620, numRuns: 200 },
  );
});

test('work that fails in memory does not hold up the next', async () => {
  const shelf = memoryShelf();
  await expect(shelf('readwrite', () => Promise.reject(new Error('no')))).rejects.toThrow('no');
  expect(await shelf('readonly', async () => 3)).toBe(3);
});

test('the older half of what can be taken back is let go, and nothing else', async () => {
  const shelf = memoryShelf();
  for (let number = 1; number <= 6; number++)
    await shelf('readwrite', (box) => putStep(box, { code: 'added', name: '' }, () => gardenOf(number)));
  await shelf('readwrite', (box) => walk(box, -1));
  const keys = async () =>
    (await shelf('readonly', (box) => box.keys())).filter((key) => typeof key === 'number');
  expect(await shelf('readwrite', letGoOldest)).toBe(true);
  expect(await keys()).toEqual([3, 4, 5, 6]);
  while (await shelf('readwrite', letGoOldest));
  expect(await keys()).toEqual([5, 6]);
  const now = await shelf('readonly', standing);
  expect({ keeper: keeperOf(now), undo: now.undo, redo: now.redo?.code }).toEqual({
    keeper: 5,
    undo: null,
    redo: 'added',
  });
});
