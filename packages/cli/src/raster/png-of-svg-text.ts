import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { initWasm, Resvg } from '@resvg/resvg-wasm';
import { fontsFolder } from '../assets-folder.ts';

/** Pixels of the image to one of the picture, as in the app. */
const scale = 2;

/** Text and bold text in Latin letters, Greek and Cyrillic; a letter that one file lacks is taken from another. */
const faces = ['text', 'bold'].flatMap((weight) =>
  ['latin', 'latin-ext', 'vietnamese', 'greek', 'cyrillic'].map((set) => `${weight}-${set}.ttf`),
);

/** What our own face calls itself; see tools/fonts. */
const family = 'Garden Sans 3';

let ready: Promise<Uint8Array[]> | null = null;

/** A PNG of a stand-alone SVG text (see `svgText`), set in our own typeface whatever the machine has. */
export async function pngOfSvgText(svg: string): Promise<Uint8Array> {
  ready ??= prepare();
  const fontBuffers = await ready;
  const drawing = new Resvg(svg, {
    fitTo: { mode: 'zoom', value: scale },
    font: { fontBuffers, defaultFontFamily: family, sansSerifFamily: family },
  });
  return drawing.render().asPng();
}

async function prepare(): Promise<Uint8Array[]> {
  const program = createRequire(import.meta.url).resolve('@resvg/resvg-wasm/index_bg.wasm');
  await initWasm(readFileSync(program));
  return faces.map((face) => readFileSync(new URL(face, fontsFolder)));
}
