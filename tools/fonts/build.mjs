// node tools/fonts/build.mjs: makes our typefaces from those of @fontsource, cut down to what is said: for the app's pages,
// and for the sheets that the command line writes, whose names of towns and notes may be in more scripts.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import subsetFont from 'subset-font';

const root = new URL('../../', import.meta.url);

const span = (first, last) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');

/** English and its neighbours, and the signs of our sentences. */
const latin = `${span(0x20, 0x7e)}${span(0xa0, 0xff)}ıŒœ\u2009\u202f‐\u2011‒–—‘’‚“”„•…′″−→`;
/** Names of towns and onions in the other languages of Europe and in Turkish. */
const latinExt = `${span(0x100, 0x17f)}ȘșȚț`;

/** On sheets: every Latin letter of the faces, those of Vietnamese, Greek and Cyrillic. */
const sheetSets = {
  latin,
  'latin-ext': `${span(0x100, 0x2bf)}${span(0x1e00, 0x1e9f)}`,
  vietnamese: `${span(0x102, 0x1b0)}${span(0x300, 0x323)}${span(0x1ea0, 0x1ef9)}₫`,
  greek: span(0x370, 0x3ff),
  cyrillic: `${span(0x400, 0x45f)}${span(0x490, 0x491)}${span(0x4b0, 0x4b1)}№`,
};

/** Numerals of one width are for tables; other features of the faces are not used. */
const keepFeatures = ['kern', 'mark', 'mkmk', 'ccmp', 'locl', 'lnum', 'tnum'];

const faces = [
  { name: 'answers', from: '@fontsource/alegreya/files/alegreya', weight: '600', axes: {} },
  // one file a weight: a page printed in a face of many weights can't be searched
  ...[
    ['text', 400],
    ['bold', 600],
  ].map(([name, wght]) => ({
    name,
    from: '@fontsource-variable/source-sans-3/files/source-sans-3',
    weight: 'wght',
    axes: { variationAxes: { wght } },
  })),
];

const sheetFolder = new URL('packages/cli/fonts/', root);
mkdirSync(sheetFolder, { recursive: true });

for (const face of faces) {
  for (const [set, text] of [
    ['latin', latin],
    ['latin-ext', latinExt],
  ]) {
    const packed = await subsetFont(await cutFrom(face, set, text), null, {
      targetFormat: 'woff2',
      keepFeatures,
      keepAllGlyphs: true,
    });
    write(new URL(`packages/app/src/look/fonts/${face.name}-${set}.woff2`, root), packed);
  }
  for (const [set, text] of Object.entries(sheetSets))
    write(new URL(`${face.name}-${set}.ttf`, sheetFolder), ended(await cutFrom(face, set, text)));
}

async function cutFrom({ from, weight, axes }, set, text) {
  const whole = readFileSync(new URL(`node_modules/${from}-${set}-${weight}-normal.woff2`, root));
  return renamed(await subsetFont(whole, text, { targetFormat: 'sfnt', keepFeatures, ...axes }));
}

function write(file, bytes) {
  writeFileSync(file, bytes);
  process.stdout.write(`${file.pathname.split('/').at(-1)}: ${bytes.length} bytes\n`);
}

/** A reader of fonts looks for the bounds of a space behind the last outline: there have to be some bytes. */
function ended(font) {
  return Buffer.concat([font, Buffer.alloc(16)]);
}

/** A face that was changed may not bear a name its makers reserved: "Source Sans" becomes as long a one of our own. */
function renamed(font) {
  let text = font.toString('latin1');
  for (const gap of ['', ' ']) {
    for (const widen of [(name) => name, (name) => [...name].map((letter) => `\0${letter}`).join('')]) {
      text = text.replaceAll(widen(`Source${gap}Sans`), widen(`Garden${gap}Sans`));
    }
  }
  return Buffer.from(text, 'latin1');
}
