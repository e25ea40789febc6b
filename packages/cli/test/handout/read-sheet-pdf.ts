import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** What a PDF says of itself to a reader that is not ours (pdf.js): words in their order with their places, faces, title. */
export async function readSheetPdf(bytes: Uint8Array) {
  const task = getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const page = await document.getPage(1);
  const { items } = await page.getTextContent();
  const [, , width, height] = page.view;
  const words = items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [, , , , x, y] = item.transform;
    return [
      {
        text: item.str,
        x,
        y,
        width: item.width,
        size: Math.hypot(item.transform[2], item.transform[3]),
        font: item.fontName,
      },
    ];
  });
  await page.getOperatorList();
  const faces = [...new Set(words.map(({ font }) => font))].map((font) => page.commonObjs.get(font));
  const { info } = await document.getMetadata();
  const read = {
    pages: document.numPages,
    width,
    height,
    words,
    text: words.map(({ text }) => text).join(' '),
    faces: faces.map(({ name, missingFile }) => ({ name: String(name), isEmbedded: missingFile !== true })),
    info: info as Record<string, unknown>,
    tree: await page.getStructTree(),
  };
  await task.destroy();
  return read;
}
