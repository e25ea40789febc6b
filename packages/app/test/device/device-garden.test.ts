import { emptyGarden, type Garden } from '@neckfall/engine';
import { beforeEach, expect, test, vi } from 'vitest';
import { type Box, type BoxKey, memoryShelf, type Shelf } from '../../src/device/box.ts';
import { type GardenStanding, openDeviceGarden } from '../../src/device/device-garden.ts';
import type { Unkept } from '../../src/device/open-data-base.ts';

const gardenOf = (keeper: number): Garden => ({ ...emptyGarden(), keeper });
const keeper = ({ garden }: GardenStanding) => garden?.keeper ?? null;

/** Tabs of a browser hear each other only when the test lets them. */
let waiting: (() => void)[] = [];
class Line extends EventTarget {
  static all: Line[] = [];
  constructor() {
    super();
    Line.all.push(this);
  }
  postMessage(data: unknown) {
    for (const other of Line.all)
      if (other !== this) waiting.push(() => other.dispatchEvent(new MessageEvent('message', { data })));
  }
}
const deliver = async () => {
  while (waiting.length > 0) {
    for (const next of waiting.splice(0)) next();
    await new Promise(setImmediate);
  }
};

beforeEach(() => {
  Line.all = [];
  waiting = [];
  vi.stubGlobal('BroadcastChannel', Line);
  return () => vi.unstubAllGlobals();
});

async function tab(shelf: Shelf) {
  const told: { now: GardenStanding; from: string }[] = [];
  let lose: (why: Unkept) => void = () => {};
  const held = await openDeviceGarden(
    (now, from) => told.push({ now, from }),
    async (lost) => {
      lose = lost;
      return shelf;
    },
  );
  const put = (keeper: number) =>
    held.change({ code: 'changed', name: String(keeper) }, () => gardenOf(keeper));
  return { ...held, put, lose, last: () => told.at(-1)! };
}

const isStep = (key: BoxKey) => typeof key === 'number';

/** A disk with room for so many steps; what does not fit changes nothing. */
function disk(room: () => number): { shelf: Shelf; keys: () => Promise<BoxKey[]> } {
  const inside = memoryShelf();
  const shelf: Shelf = (mode, work) =>
    inside(mode, async (box) => {
      const before = new Map<BoxKey, unknown>();
      for (const key of await box.keys()) before.set(key, await box.get(key));
      const tight: Box = {
        ...box,
        put: async (key, value) => {
          const steps = (await box.keys()).filter((other) => isStep(other) && other !== key).length;
          if (isStep(key) && steps >= room()) throw new DOMException('full', 'QuotaExceededError');
          await box.put(key, value);
        },
      };
      try {
        return await work(tight);
      } catch (error) {
        for (const key of await box.keys()) await box.remove(key);
        for (const [key, value] of before) await box.put(key, value);
        throw error;
      }
    });
  return { shelf, keys: () => inside('readonly', (box) => box.keys()) };
}

test('a full disk lets go of the oldest steps first, and says so', async () => {
  const { shelf } = disk(() => 5);
  const { put, last, back } = await tab(shelf);
  for (let number = 1; number <= 4; number++) await put(number);
  expect(last().now).toMatchObject({ unkept: null, isShortened: false });
  await put(5);
  expect(keeper(last().now)).toBe(5);
  expect(last().now).toMatchObject({ unkept: null, isShortened: true, undo: { name: '5' } });
  await back();
  expect(keeper(last().now)).toBe(4);
  // another page finds all of it
  expect(keeper((await tab(shelf)).last().now)).toBe(4);
});

test('a disk with no room at all loses nothing of what is on the page, and keeps what it had', async () => {
  let room = 9;
  const { shelf } = disk(() => room);
  const { put, last, back } = await tab(shelf);
  await put(1);
  await put(2);
  room = 0;
  await put(3);
  expect(last().now).toMatchObject({ unkept: 'full', garden: { keeper: 3 } });
  await back();
  expect(keeper(last().now)).toBe(2);
  expect(keeper((await tab(shelf)).last().now)).toBe(2);
});

test('what is lost while the page is open goes on in memory at once', async () => {
  const { put, last, lose, back } = await tab(memoryShelf());
  await put(1);
  lose('cleared');
  await new Promise(setImmediate);
  expect(last().now).toMatchObject({ unkept: 'cleared', garden: { keeper: 1 } });
  await put(2);
  await back();
  expect(last().now).toMatchObject({ unkept: 'cleared', garden: { keeper: 1 } });
});

test('a browser that does not open what it keeps says why', async () => {
  const told: GardenStanding[] = [];
  const refusal = new DOMException('later', 'VersionError');
  await openDeviceGarden(
    (now) => told.push(now),
    () => Promise.reject(refusal),
  );
  expect(told).toMatchObject([{ garden: null, unkept: 'newer' }]);
});

test('taking back names the change of another tab, and waits to be told of one not yet seen', async () => {
  const shelf = memoryShelf();
  const one = await tab(shelf);
  const other = await tab(shelf);
  await one.put(1);
  await deliver();
  expect(one.last().now.undo).toEqual({ code: 'changed', name: '1', isElsewhere: false });
  expect(other.last().now.undo).toEqual({ code: 'changed', name: '1', isElsewhere: true });
  await other.put(2);
  // the news is still on its way
  await one.back();
  expect(keeper(one.last().now)).toBe(2);
  expect(one.last()).toMatchObject({ from: 'elsewhere', now: { undo: { name: '2' } } });
  await deliver();
  expect(one.last().now.undo).toMatchObject({ name: '2', isElsewhere: true });
  await one.back();
  await deliver();
  expect([one, other].map((each) => keeper(each.last().now))).toEqual([1, 1]);
  expect(other.last().now.redo).toMatchObject({ name: '2', isElsewhere: false });
});

test('own changes are taken back as fast as one presses', async () => {
  const { put, back, last } = await tab(memoryShelf());
  for (const number of [1, 2, 3]) await put(number);
  await Promise.all([back(), back()]);
  expect(keeper(last().now)).toBe(1);
});

test('a tab opened later knows whose the change of one still open is', async () => {
  const shelf = memoryShelf();
  const one = await tab(shelf);
  await one.put(1);
  const later = await tab(shelf);
  expect(later.last().now.undo).toMatchObject({ isElsewhere: false });
  await deliver();
  expect(later.last().now.undo).toMatchObject({ isElsewhere: true });
});
