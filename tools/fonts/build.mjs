// node tools/fonts/build.mjs: makes the app's typefaces from those of @fontsource, cut down to what its pages say.
import { readFileSync, writeFileSync } from 'node:fs';
import subsetFont from 'subset-font';

const root = new URL('../../', import.meta.url);

const span = (first, last) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');

/** English and its neighbours, and the signs of our sentences. */
const latin = `${span(0x20, 0x7e)}${span(0xa0, 0xff)}ıŒœ\u2009\u202f‐\u2011‒–—‘’‚“”„•…′″−→`;
/** Names of towns and onions in the other languages of Europe and in Turkish. */
const latinExt = `${span(0x100, 0x17f)}ȘșȚț`;

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

for (const { name, from, weight, axes } of faces) {
  for (const [set, text] of [
    ['latin', latin],
    ['latin-ext', latinExt],
  ]) {
    const whole = readFileSync(new URL(`node_modules/${from}-${set}-${weight}-normal.woff2`, root));
    const cut = await subsetFont(whole, text, { targetFormat: 'sfnt', keepFeatures, ...axes });
    const packed = await subsetFont(renamed(cut), null, {
      targetFormat: 'woff2',
      keepFeatures,
      keepAllGlyphs: true,
    });
    writeFileSync(new URL(`packages/app/src/look/fonts/${name}-${set}.woff2`, root), packed);
    process.stdout.write(`${name}-${set}: ${packed.length} bytes\n`);
  }
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
