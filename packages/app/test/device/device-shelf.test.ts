import { afterEach, expect, test, vi } from 'vitest';
import { openDeviceShelf } from '../../src/device/device-shelf.ts';
import { type Timer, type Unkept, whyUnkept } from '../../src/device/open-data-base.ts';

afterEach(() => {
  vi.unstubAllGlobals();
});

/** A browser that answers when the test says so. */
function slowBrowser() {
  const request = {} as IDBOpenDBRequest & { result: IDBDatabase };
  const base = { close: vi.fn() } as unknown as IDBDatabase;
  vi.stubGlobal('indexedDB', { open: () => request });
  const lost: Unkept[] = [];
  let due = () => {};
  const stop = vi.fn();
  const timer: Timer = (_, whenDue) => {
    due = whenDue;
    return stop;
  };
  return {
    base,
    lost,
    stop,
    opening: openDeviceShelf((why) => lost.push(why), timer),
    due: () => due(),
    opens: () => {
      Object.assign(request, { result: base });
      request.onsuccess?.(new Event('success'));
    },
    fails: (name: string) => {
      Object.assign(request, { error: new DOMException('no', name) });
      request.onerror?.(new Event('error'));
    },
  };
}

const failure = (opening: Promise<unknown>) => opening.then(() => null, whyUnkept);

test('a browser that never opens what it keeps is not waited for', async () => {
  const { opening, due, opens, base } = slowBrowser();
  due();
  expect(await failure(opening)).toBe('slow');
  // what opens after all stands in nobody’s way
  opens();
  await vi.waitFor(() => expect(base.close).toHaveBeenCalled());
});

test('one that opens it in time is not interrupted', async () => {
  const { opening, opens, stop, base } = slowBrowser();
  opens();
  await opening;
  expect(stop).toHaveBeenCalled();
  expect(base.close).not.toHaveBeenCalled();
});

// names of failures: Indexed Database API 3.0, 4.1 (VersionError); Web IDL, 2.8.1 (the others)
test.each([
  ['VersionError', 'newer'],
  ['SecurityError', 'refused'],
  ['UnknownError', 'refused'],
  ['QuotaExceededError', 'full'],
])('of %s it says why: %s', async (name, why) => {
  const { opening, fails } = slowBrowser();
  fails(name);
  expect(await failure(opening)).toBe(why);
});

test('what is taken away while it is open is told at once', async () => {
  const { opening, opens, base, lost } = slowBrowser();
  opens();
  await opening;
  base.onclose?.(new Event('close'));
  const change = (newVersion: number | null) =>
    base.onversionchange?.({ newVersion } as IDBVersionChangeEvent);
  change(null);
  change(2);
  expect(lost).toEqual(['cleared', 'cleared', 'newer']);
  expect(base.close).toHaveBeenCalledTimes(2);
});
