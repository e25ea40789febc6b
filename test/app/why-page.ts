import type { Page } from 'playwright-core';
import { ready } from './open-app.ts';

export const bank = 'at=52.08,-3.13&name=Pencarreg+Bank';
export const sets = 'class=long&start=sets&date=2027-04-05';
export const plain = (text: string | null) => (text ?? '').replace(/\s+/g, ' ').trim();
export const tile = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
export const seeWhy = (page: Page) => page.getByRole('button', { name: 'See why' });

export async function headline(page: Page): Promise<string> {
  return plain(await page.locator('h1').textContent());
}

/** Presses a thing that was seen. */
export async function saw(page: Page, ...names: string[]): Promise<void> {
  for (const name of names) await tile(page, name).click();
}

/** Goes on to the answer. */
export async function see(page: Page): Promise<void> {
  await seeWhy(page).click();
  await page.locator('.causes').waitFor();
  await ready(page);
}

/** The causes with their chances in words, the likeliest first; what nobody can know last. */
export async function causesTold(page: Page): Promise<string[]> {
  const causes = await page
    .locator('.cause')
    .evaluateAll((all) =>
      all.map(
        (one) => `${one.querySelector('h3')?.textContent}: ${one.querySelector('.chance')?.textContent}`,
      ),
    );
  return [...causes, (await page.locator('.unlisted').textContent()) ?? ''].map(plain);
}
