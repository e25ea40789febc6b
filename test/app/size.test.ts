import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { firstAnswer, limits } from './first-answer.ts';
import { type App, hasChromium, openApp } from './open-app.ts';

describe.skipIf(!hasChromium)('from nothing to the first answer', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test('stays within what was promised to phones', async () => {
    const { scriptBytes, totalBytes, fontBytes, files } = await firstAnswer(app);
    expect(files.some((file) => file.includes('towns-large'))).toBe(true);
    expect(files.some((file) => file.includes('climate'))).toBe(true);
    expect(files.some((file) => file.includes('towns-small'))).toBe(false);
    expect(scriptBytes).toBeGreaterThan(20_000);
    expect(scriptBytes).toBeLessThanOrEqual(limits.scriptBytes);
    expect(fontBytes).toBeGreaterThan(20_000);
    expect(totalBytes).toBeLessThanOrEqual(limits.totalBytes);
  });

  test('all typefaces together stay small, other alphabets and all', async () => {
    const assets = join(inject('appFolder'), 'assets');
    const fonts = readdirSync(assets).filter((file) => file.endsWith('.woff2'));
    const bytes = fonts.reduce((sum, file) => sum + statSync(join(assets, file)).size, 0);
    expect(fonts).toHaveLength(6);
    expect(bytes).toBeLessThanOrEqual(limits.fontBytes);
  });
});
