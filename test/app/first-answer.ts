import type { App } from './open-app.ts';

/** What a phone may have to fetch before the first answer, gzipped where it zips. */
export const limits = { scriptBytes: 110_000, totalBytes: 1_200_000, fontBytes: 80_000 } as const;

export type FirstAnswer = {
  scriptBytes: number;
  totalBytes: number;
  fontBytes: number;
  files: string[];
  /** From the town chosen to the answer on the page, ms. */
  waitMs: number;
};

/** A first visit: a town typed and chosen; all that was sent until the answer stood. */
export async function firstAnswer(app: App): Promise<FirstAnswer> {
  const page = await app.page();
  await page.getByRole('combobox').fill('Lyon');
  await page.getByRole('option').first().waitFor();
  const waitMs = await page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const from = performance.now();
        new MutationObserver((_, observer) => {
          if (document.querySelector('h1.answer') === null) return;
          observer.disconnect();
          resolve(performance.now() - from);
        }).observe(document.body, { childList: true, subtree: true });
        document.querySelector<HTMLElement>('[role=option]')?.click();
      }),
  );
  const sent = [...app.sent];
  await page.close();
  const sum = (files: typeof sent) => files.reduce((total, { bytes }) => total + bytes, 0);
  return {
    scriptBytes: sum(sent.filter(({ path }) => path.endsWith('.js'))),
    totalBytes: sum(sent),
    fontBytes: sum(sent.filter(({ path }) => path.endsWith('.woff2'))),
    files: sent.map(({ path }) => path),
    waitMs,
  };
}
