import type { Page } from 'playwright-core';
import { openFolds } from './open-app.ts';

/** Presses the button of this name and takes what the browser is handed. */
export async function download(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  await openFolds(page);
  const [handed] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  const chunks: Buffer[] = [];
  for await (const chunk of await handed.createReadStream()) chunks.push(chunk as Buffer);
  return { name: handed.suggestedFilename(), bytes: Buffer.concat(chunks) };
}
