import type { Page } from 'playwright-core';

export type Taken = { names: string[]; svg: string; png: Buffer; html: string };

/** Opens what a picture is taken along as, inside a part of a page, and keeps all of it. */
export async function taken(page: Page, part: string, opener = 'Keep this picture'): Promise<Taken> {
  const row = page.locator(`${part} details.take`, { hasText: opener }).first();
  await row.locator('summary').click();
  const names: string[] = [];
  const files: Buffer[] = [];
  for (const button of ['(SVG)', '(PNG)', '(HTML)']) {
    const [handed] = await Promise.all([
      page.waitForEvent('download'),
      row.getByRole('button', { name: button }).click(),
    ]);
    names.push(handed.suggestedFilename());
    const chunks: Buffer[] = [];
    for await (const chunk of await handed.createReadStream()) chunks.push(chunk as Buffer);
    files.push(Buffer.concat(chunks));
  }
  const [svg, png, html] = files;
  return { names, svg: svg.toString(), png, html: html.toString() };
}
