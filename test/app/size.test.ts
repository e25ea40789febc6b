import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { firstAnswer, limits } from './first-answer.ts';
import { type App, hasChromium, openApp } from './open-app.ts';

describe.skipIf(!hasChromium)('from nothing to the first answer', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test('stays within what was promised to phones', async () => {
    const { scriptBytes, totalBytes, files } = await firstAnswer(app);
    expect(files.some((file) => file.includes('towns-large'))).toBe(true);
    expect(files.some((file) => file.includes('climate'))).toBe(true);
    expect(files.some((file) => file.includes('towns-small'))).toBe(false);
    expect(scriptBytes).toBeGreaterThan(20_000);
    expect(scriptBytes).toBeLessThanOrEqual(limits.scriptBytes);
    expect(totalBytes).toBeLessThanOrEqual(limits.totalBytes);
  });
});
