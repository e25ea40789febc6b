import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import './device-entry.ts';
import { openDevicePages } from './device-page.ts';
import { type App, hasChromium } from './open-app.ts';
import { segmentMarks, withPlace } from './photo-with-place.ts';

/** A picture of that size as the browser writes it. */
const painted = async (page: Page, width: number, height: number, type = 'image/jpeg') =>
  Uint8Array.from(
    await page.evaluate(
      async ([width, height, type]) => {
        const canvas = new OffscreenCanvas(width, height);
        const context = canvas.getContext('2d')!;
        context.fillStyle = 'green';
        context.fillRect(0, 0, width / 2, height);
        const blob = await canvas.convertToBlob({ type });
        return [...new Uint8Array(await blob.arrayBuffer())];
      },
      [width, height, type] as const,
    ),
  );

type Shrunk = { refusal: object } | { bytes: number[]; type: string; width: number; height: number };

const shrunk = (page: Page, bytes: Uint8Array, withoutOffscreen = false): Promise<Shrunk> =>
  page.evaluate(
    async ([bytes, withoutOffscreen]) => {
      if (withoutOffscreen) Reflect.deleteProperty(globalThis, 'OffscreenCanvas');
      const made = await device.shrinkPhoto(new Blob([Uint8Array.from(bytes)]));
      if (!(made instanceof Blob)) return { refusal: made };
      const { width, height } = await createImageBitmap(made);
      return { bytes: [...new Uint8Array(await made.arrayBuffer())], type: made.type, width, height };
    },
    [[...bytes], withoutOffscreen] as const,
  );

describe.skipIf(!hasChromium)('photos of what was seen', () => {
  let app: App;
  beforeAll(async () => {
    app = await openDevicePages();
  });
  afterAll(async () => {
    app.expectClean();
    await app.close();
  });

  test.each([false, true])(
    'are made small, the right way up, and tell nothing of the place (%s)',
    async (old) => {
      const page = await app.page();
      const taken = withPlace(await painted(page, 2400, 1600), 6);
      expect(segmentMarks(taken).slice(0, 4)).toEqual([0xe1, 0xe1, 0xed, 0xfe]);
      const made = await shrunk(page, taken, old);
      if (!('bytes' in made)) throw new Error('refused');
      const { bytes, ...size } = made;
      expect(size).toEqual({ type: 'image/jpeg', width: 1067, height: 1600 });
      // JFIF (ISO/IEC 10918-5) and a colour profile (ICC.1, annex B.4) at most
      const marks = segmentMarks(Uint8Array.from(bytes));
      expect(marks.filter((mark) => (mark >= 0xe0 && mark <= 0xef) || mark === 0xfe)).not.toContain(0xe1);
      const said = String.fromCharCode(...bytes.slice(0, 4000));
      for (const told of ['Exif', 'GPS', 'xmp', 'Ines', 'Bram', 'Pencarreg'])
        expect(said).not.toContain(told);
      await page.close();
    },
  );

  test('small ones keep their size, and what is transparent is white', async () => {
    const page = await app.page();
    const made = await shrunk(page, await painted(page, 300, 200, 'image/png'));
    expect(made).toMatchObject({ type: 'image/jpeg', width: 300, height: 200 });
    const pixel = await page.evaluate(
      async (bytes) => {
        const picture = await createImageBitmap(new Blob([Uint8Array.from(bytes)]));
        const context = new OffscreenCanvas(300, 200).getContext('2d')!;
        context.drawImage(picture, 0, 0);
        return [...context.getImageData(280, 100, 1, 1).data];
      },
      (made as { bytes: number[] }).bytes,
    );
    expect(pixel).toEqual([255, 255, 255, 255]);
    await page.close();
  });

  test('what is no picture, or too large a file, is refused with the reason', async () => {
    const page = await app.page();
    const text = new TextEncoder().encode('leaves: 5');
    expect(await shrunk(page, text)).toEqual({ refusal: { problem: 'not-image' } });
    const half = (await painted(page, 300, 200)).slice(0, 20);
    expect(await shrunk(page, half)).toEqual({ refusal: { problem: 'not-image' } });
    const large = await page.evaluate(() => device.shrinkPhoto(new Blob([new Uint8Array(30_000_001)])));
    expect(large).toEqual({ problem: 'too-big', bytes: 30_000_001, most: 30_000_000 });
    await page.close();
  });

  test('are there when the browser is opened again, and go where they are removed', async () => {
    const context = await app.context();
    const first = await app.page('', { context });
    await first.evaluate(async () => {
      const photos = await device.openPhotos();
      await photos.put('a', new Blob(['a photo'], { type: 'image/jpeg' }));
      await photos.put('b', new Blob(['another']));
      await photos.remove('b');
    });
    await first.close();
    const page = await app.page('', { context });
    const found = await page.evaluate(async () => {
      const photos = await device.openPhotos();
      const photo = await photos.get('a');
      const none = await photos.get('b');
      return {
        keys: await photos.keys(),
        type: photo?.type,
        text: await photo?.text(),
        none,
        kept: photos.areKept(),
      };
    });
    expect(found).toEqual({ keys: ['a'], type: 'image/jpeg', text: 'a photo', none: null, kept: true });
    await context.close();
  });

  test('where the browser keeps nothing, they last as long as the page', async () => {
    const before = `Object.defineProperty(window, 'indexedDB', { value: undefined });`;
    const page = await app.page('', { before });
    const found = await page.evaluate(async () => {
      const photos = await device.openPhotos();
      await photos.put('a', new Blob(['a photo']));
      return {
        text: await (await photos.get('a'))?.text(),
        keys: await photos.keys(),
        kept: photos.areKept(),
      };
    });
    expect(found).toEqual({ text: 'a photo', keys: ['a'], kept: false });
    await page.close();
  });

  test('stay while what they show can be brought back, and go when it cannot', async () => {
    const page = await app.page();
    const seen = await page.evaluate(async () => {
      let now: { garden: { observations: readonly { id: string }[] } | null } = { garden: null };
      const held = await device.openDeviceGarden((standing) => (now = standing));
      const photos = await device.devicePhotos();
      const told: { ids: string[]; photos: string[] }[] = [];
      const tell = async () =>
        told.push({ ids: (now.garden?.observations ?? []).map(({ id }) => id), photos: await photos.keys() });
      const observation = (id: string) => ({ id, plantingId: 'bed', date: '2027-05-20', leavesGreen: 5 });
      const step = { code: 'seen', name: 'Bed' } as const;
      await held.change(step, () => ({ ...device.emptyGarden(), observations: ['a', 'b'].map(observation) }));
      for (const id of ['a', 'b']) await photos.put(id, new Blob([id]));
      await held.change(
        { ...step, code: 'seen-removed' },
        (now) => now && { ...now, observations: [observation('b')] },
      );
      await tell();
      await held.back();
      await tell();
      await held.on();
      for (let more = 0; more < 50; more++) await held.change(step, (now) => now && { ...now, more });
      while ((await photos.keys()).includes('a')) await new Promise((resolve) => setTimeout(resolve, 10));
      await tell();
      await held.change({ code: 'forgotten', name: '' }, () => null);
      await tell();
      await held.wipe();
      await tell();
      return told;
    });
    expect(seen).toEqual([
      { ids: ['b'], photos: ['a', 'b'] },
      { ids: ['a', 'b'], photos: ['a', 'b'] },
      { ids: ['b'], photos: ['b'] },
      { ids: [], photos: ['b'] },
      { ids: [], photos: [] },
    ]);
    await page.close();
  });

  test('what version 1 kept opens, with its steps, in a data base that has photos', async () => {
    const context = await app.context();
    const first = await app.page('', { context });
    const version = await first.evaluate(
      () =>
        new Promise<number>((resolve, reject) => {
          const opening = indexedDB.open('neckfall', 1);
          opening.onupgradeneeded = () => opening.result.createObjectStore('garden');
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            const base = opening.result;
            const writing = base.transaction('garden', 'readwrite');
            const store = writing.objectStore('garden');
            const garden = (keeper: string) => ({ schema: 'neckfall/garden@1', keeper });
            store.put({ garden: null, file: null, step: null }, 0);
            store.put({ garden: garden('Ines'), file: null, step: { code: 'opened', name: 'x' } }, 1);
            store.put({ garden: garden('Bram'), file: null, step: { code: 'added', name: 'Bed' } }, 2);
            store.put(2, 'at');
            writing.oncomplete = () => {
              base.close();
              resolve(base.version);
            };
          };
        }),
    );
    expect(version).toBe(1);
    const keepers = await first.evaluate(async () => {
      let keeper: unknown = null;
      const held = await device.openDeviceGarden((standing) => (keeper = standing.garden?.keeper));
      const told = [keeper];
      await held.change({ code: 'changed', name: 'x' }, (now) => now && { ...now, keeper: 'Ines and Bram' });
      told.push(keeper);
      for (let times = 0; times < 2; times++) {
        await held.back();
        told.push(keeper);
      }
      const photos = await device.openPhotos();
      await photos.put('a', new Blob(['a']));
      return [...told, photos.areKept()];
    });
    expect(keepers).toEqual(['Bram', 'Ines and Bram', 'Bram', 'Ines', true]);
    await context.close();
  });
});
