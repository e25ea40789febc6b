import { emptyGarden, type Garden, type Observation, restoreGarden } from '@neckfall/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isPartKey, memoryShelf, type Shelf } from '../../src/device/box.ts';
import { letGoOldest, mostSteps, putStep, standing, walk } from '../../src/device/garden-steps.ts';
import { shelfOnceRead } from '../../src/device/shelf-once-read.ts';
import { idsInSteps } from '../../src/device/sweep.ts';
import { store } from './a-store.ts';

const seen = (id: string, plantingId: string | null, leavesGreen = 5): Observation => ({
  id,
  plantingId,
  date: '2027-05-20',
  leavesGreen,
});
const mark = (id: string, plantingId: string, job = 'weed') =>
  ({ id, plantingId, job, state: 'done', date: '2027-05-20' }) as const;
const weather = (id: string, rain: number) => ({
  id,
  placeId: id,
  firstDate: '2027-05-01',
  tempMinC: [4],
  tempMaxC: [15],
  rainMm: [rain],
  solarMJ: [null],
  forecastFrom: null,
  sources: [],
});
const step = { code: 'seen', name: 'The long bed' } as const;

const change = (shelf: Shelf, make: (now: Garden) => Garden) =>
  shelf('readwrite', (box) => putStep(box, step, (now) => make(now ?? emptyGarden())));
const look = (shelf: Shelf) => shelf('readonly', standing);

test('a change writes the part that it touches, and reads nothing again', async () => {
  const { shelf, asked } = store();
  const page = shelfOnceRead(shelf);
  await change(page, (now) => ({
    ...now,
    observations: [seen('1', 'a'), seen('2', 'b'), seen('3', 'b'), seen('4', null)],
    jobs: [mark('1', 'a'), mark('2', 'b')],
    weather: [weather('w', 1), weather('v', 2)],
  }));
  asked.length = 0;
  await change(page, (now) => ({ ...now, observations: [...now.observations, seen('5', 'b')] }));
  expect(asked.sort()).toEqual(['get mark', 'put at', 'put mark', 'put part', 'put step']);
  asked.length = 0;
  await change(page, (now) => ({ ...now, jobs: [...now.jobs, mark('3', 'b')] }));
  expect(asked.sort()).toEqual(['get mark', 'put at', 'put mark', 'put part', 'put step']);
  asked.length = 0;
  await change(page, (now) => ({ ...now, weather: [weather('w', 7), now.weather[1]] }));
  expect(asked.filter((what) => what === 'put part')).toHaveLength(1);
  asked.length = 0;
  await change(page, (now) => ({ ...now, keeper: 'Bram Okoro' }));
  expect(asked.filter((what) => what === 'put part')).toHaveLength(1);
  const { garden } = await look(shelfOnceRead(shelf));
  expect(garden).toMatchObject({ keeper: 'Bram Okoro', weather: [{ rainMm: [7] }, { rainMm: [2] }] });
  expect(garden?.observations.map(({ id }) => id).sort()).toEqual(['1', '2', '3', '4', '5']);
  expect(garden?.jobs.map(({ id }) => id)).toEqual(['1', '2', '3']);
});

test('what another tab changed meanwhile wins, and nothing is lost of either', async () => {
  const { shelf } = store();
  const [one, other] = [shelfOnceRead(shelf), shelfOnceRead(shelf)];
  await change(one, (now) => ({ ...now, observations: [seen('1', 'a')] }));
  await look(other);
  await change(other, (now) => ({ ...now, observations: [...now.observations, seen('2', 'a')] }));
  await change(one, (now) => ({ ...now, observations: [...now.observations, seen('3', 'b')] }));
  for (const page of [one, other]) {
    const { garden, undo } = await look(page);
    expect(garden?.observations.map(({ id }) => id)).toEqual(['1', '2', '3']);
    expect(undo?.code).toBe('seen');
  }
});

test('what another page changed without leaving a mark, as version 1 did, is read again', async () => {
  const { shelf, held } = store();
  const page = shelfOnceRead(shelf);
  held.set(0, { garden: null, file: null, step: null });
  expect((await look(page)).undo).toBeNull();
  held.set(1, { garden: restoreGarden(emptyGarden()).garden, file: null, step: { ...step, mark: 'x.1' } });
  held.set('at', 1);
  expect((await look(page)).undo).toMatchObject({ mark: 'x.1' });
});

test('a key that was removed is told no more', async () => {
  const page = shelfOnceRead(store().shelf);
  const told = await page('readwrite', async (box) => {
    await box.put(1, 'one');
    await box.put(2, 'two');
    await box.keys();
    await box.remove(1);
    return box.keys();
  });
  expect(told).toEqual([2]);
});

test('work that fails leaves nothing of itself in what is remembered', async () => {
  const { shelf } = store();
  const page = shelfOnceRead(shelf);
  await change(page, (now) => ({ ...now, observations: [seen('1', 'a')] }));
  const failing = page('readwrite', async (box) => {
    await putStep(box, step, () => ({ ...emptyGarden(), observations: [seen('9', 'a')] }));
    throw new Error('no room');
  });
  await expect(failing).rejects.toThrow('no room');
  expect((await look(page)).garden?.observations).toEqual([seen('1', 'a')]);
});

test('steps of version 1, with whole gardens, open and go on', async () => {
  const { shelf, held } = store();
  const whole = (keeper: number) =>
    restoreGarden({ ...emptyGarden(), keeper, observations: [seen('1', 'a')] });
  held.set(0, { garden: null, file: null, step: null });
  for (const number of [1, 2])
    held.set(number, {
      garden: whole(number).garden,
      file: 'bank.neckfall.json',
      step: { ...step, mark: 'x.1' },
    });
  held.set('at', 2);
  const page = shelfOnceRead(shelf);
  expect(await look(page)).toMatchObject({ garden: { keeper: 2 }, file: 'bank.neckfall.json', mended: [] });
  expect(await shelf('readonly', idsInSteps)).toEqual(new Set(['1']));
  await change(page, (now) => ({ ...now, observations: [...now.observations, seen('2', 'a')] }));
  expect(await shelf('readonly', idsInSteps)).toEqual(new Set(['1', '2']));
  const back = await page('readwrite', (box) => walk(box, -1));
  expect(back.garden).toEqual(whole(2).garden);
  const on = await shelfOnceRead(shelf)('readwrite', (box) => walk(box, 1));
  expect(on.garden?.observations).toHaveLength(2);
});

test('steps of before work had parts of its own open and go on, with the work that lay in them', async () => {
  const { shelf, held } = store();
  const { observations: _, weather: __, ...rest } = emptyGarden();
  held.set('part.rest', { ...rest, jobs: [mark('1', 'a')] });
  held.set('part.seen', [seen('1', 'a')]);
  const parts = { rest: 'part.rest', observations: ['part.seen'], weather: [] };
  held.set(0, { parts, file: null, step: null });
  held.set('at', 0);
  const page = shelfOnceRead(shelf);
  expect((await look(page)).garden).toMatchObject({ jobs: [{ id: '1' }], observations: [{ id: '1' }] });
  await change(page, (now) => ({ ...now, jobs: [...now.jobs, mark('2', 'a')] }));
  const { garden, mended } = await look(shelf);
  expect({ mended, ids: garden?.jobs.map(({ id }) => id) }).toEqual({ mended: [], ids: ['1', '2'] });
  expect(held.get('part.rest')).toMatchObject({ jobs: [{ id: '1' }] });
  expect((await page('readwrite', (box) => walk(box, -1))).garden?.jobs).toHaveLength(1);
});

test('parts that were damaged or lost are mended, told, and written anew by the next change', async () => {
  const { shelf, held } = store();
  await change(shelf, (now) => ({
    ...now,
    observations: [seen('1', 'a'), seen('2', 'b')],
    weather: [weather('w', 1)],
  }));
  const parts = [...held.keys()].filter(isPartKey);
  const partWith = (id: string) =>
    parts.find((key) => JSON.stringify(held.get(key)).includes(`"id":"${id}"`))!;
  held.set(partWith('1'), [{ ...seen('1', 'a'), leavesGreen: 900 }]);
  held.delete(partWith('w'));
  const { garden, mended } = await look(shelf);
  expect(mended.map(({ code, path }) => `${code} ${path}`).sort()).toEqual([
    'emptied observations[0].leavesGreen',
    'entry-dropped weather[0]',
  ]);
  expect(garden?.observations.map(({ id }) => id)).toEqual(['1', '2']);
  const next = await change(shelf, (now) => ({ ...now, keeper: 1 }));
  expect(next.mended).toEqual([]);
  expect((await look(shelf)).mended).toEqual([]);
});

test('a part that was emptied is not gone on from', async () => {
  const { shelf, held } = store();
  await change(shelf, (now) => ({ ...now, observations: [seen('1', 'a')] }));
  const part = [...held.keys()].filter(isPartKey).find((key) => Array.isArray(held.get(key)))!;
  held.set(part, []);
  await change(shelf, (now) => ({ ...now, observations: [...now.observations, seen('2', 'a')] }));
  expect((await look(shelf)).garden?.observations.map(({ id }) => id)).toEqual(['2']);
});

test('the same id in two parts is given anew, as in a file', async () => {
  const { shelf, held } = store();
  await change(shelf, (now) => ({ ...now, observations: [seen('1', 'a'), seen('2', 'b')] }));
  const part = [...held.keys()]
    .filter(isPartKey)
    .find((key) => JSON.stringify(held.get(key)).includes('"b"'))!;
  held.set(part, [seen('1', 'b')]);
  const { garden, mended } = await look(shelf);
  expect(mended).toMatchObject([{ code: 'id-given' }]);
  expect(new Set(garden?.observations.map(({ id }) => id)).size).toBe(2);
});

type Move =
  | { planting: string }
  | { gone: number }
  | { done: string }
  | { rain: number }
  | 'back'
  | 'on'
  | 'elsewhere';
const moves = fc.array<Move>(
  fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom('a', 'b', 'c').map((planting) => ({ planting })) },
    fc.nat(9).map((gone) => ({ gone })),
    fc.constantFrom('a', 'b').map((done) => ({ done })),
    fc.nat(99).map((rain) => ({ rain })),
    fc.constantFrom('back' as const, 'on' as const, 'elsewhere' as const),
  ),
  { maxLength: 70, size: 'max' },
);

function moved(now: Garden, move: Exclude<Move, string>, nth: number): Garden {
  if ('gone' in move) return { ...now, observations: now.observations.filter((_, at) => at !== move.gone) };
  if ('done' in move) return { ...now, jobs: [...now.jobs, mark(`${nth}`, move.done)] };
  if ('rain' in move) return { ...now, weather: [weather('w', move.rain)] };
  return { ...now, observations: [...now.observations, seen(`${nth}`, move.planting)] };
}

const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1);
const plain = (garden: Garden | null) =>
  garden && [garden.weather, [...garden.observations].sort(byId), [...garden.jobs].sort(byId)];

test('goes back and on as a plain list of whole gardens would, from two pages, and leaves no part behind', async () => {
  await fc.assert(
    fc.asyncProperty(moves, async (all) => {
      const { shelf, held } = store();
      let [page, other] = [shelfOnceRead(shelf), shelfOnceRead(shelf)];
      let list: (Garden | null)[] = [null];
      let at = 0;
      for (const [nth, move] of all.entries()) {
        if (move === 'elsewhere') [page, other] = [other, page];
        else if (move === 'back' || move === 'on') {
          const by = move === 'back' ? -1 : 1;
          at = Math.max(0, Math.min(list.length - 1, at + by));
          await page('readwrite', (box) => walk(box, by));
        } else {
          const next = moved(list[at] ?? emptyGarden(), move, nth);
          list = [...list.slice(0, at + 1), next].slice(-mostSteps);
          at = list.length - 1;
          await change(page, (now) => moved(sorted(now, list[at - 1] ?? null), move, nth));
        }
        expect(plain((await look(page)).garden)).toEqual(plain(list[at]));
      }
      expect(plain((await look(shelfOnceRead(shelf))).garden)).toEqual(plain(list[at]));
      const steps = [...held.keys()].filter((key) => typeof key === 'number').map((key) => held.get(key));
      const wanted = JSON.stringify(steps);
      expect([...held.keys()].filter(isPartKey).filter((key) => !wanted.includes(key))).toEqual([]);
    }),
    { seed: 20270520, numRuns: 60 },
  );
});

/** Observations stand in no order: that of the plain list, so that its places mean the same. */
function sorted(now: Garden, as: Garden | null): Garden {
  const known = new Map(now.observations.map((entry) => [entry.id, entry]));
  return { ...now, observations: (as?.observations ?? []).map(({ id }) => known.get(id)!) };
}

test('observations whose steps go are told, and those still in a step are known', async () => {
  const shelf = memoryShelf();
  const gone: string[][] = [];
  const put = (make: (now: Garden) => Garden) =>
    shelf('readwrite', (box) =>
      putStep(
        box,
        step,
        (now) => make(now ?? emptyGarden()),
        undefined,
        (ids) => gone.push([...ids]),
      ),
    );
  await put((now) => ({ ...now, observations: [seen('1', 'a'), seen('2', 'a')] }));
  await put((now) => ({ ...now, observations: now.observations.slice(1) }));
  expect(gone).toEqual([]);
  await shelf('readwrite', (box) => letGoOldest(box, (ids) => gone.push([...ids])));
  await shelf('readwrite', (box) => letGoOldest(box, (ids) => gone.push([...ids])));
  expect(gone.flat().sort()).toEqual(['1', '2']);
  expect(await shelf('readonly', idsInSteps)).toEqual(new Set(['2']));
});
