import { inflateSync } from 'node:zlib';

/**
 * Pages and text of a PDF as Chromium writes it: compressed streams, glyphs by number, and a table of characters for
 * each font (PDF 1.7, sections 7.3.8, 9.4.3, 9.10.3). Spaces are left out, since lines break anywhere.
 */
export function readPdf(pdf: Buffer): { pages: number; text: string } {
  const raw = pdf.toString('latin1');
  const objects = new Map<number, string>();
  for (const [, id, body] of raw.matchAll(/(?:^|\n)(\d+) 0 obj\s([\s\S]*?)\sendobj/g))
    objects.set(Number(id), body);
  const streams = new Map([...objects].map(([id, body]) => [id, streamOf(body)]));
  const fonts = new Map<string, Map<number, string>>();
  for (const [, name, id] of raw.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    const table = /\/ToUnicode (\d+) 0 R/.exec(objects.get(Number(id)) ?? '');
    if (table) fonts.set(name, charactersOf(streams.get(Number(table[1])) ?? ''));
  }
  let text = '';
  for (const stream of streams.values()) {
    if (!/ T[jJ]\b/.test(stream)) continue;
    let font = new Map<number, string>();
    for (const [, name, glyphs] of stream.matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-Fa-f\s]+)>/g)) {
      if (name) font = fonts.get(name) ?? font;
      else text += decoded(glyphs, font);
    }
  }
  return { pages: [...raw.matchAll(/\/Type\s*\/Page\b/g)].length, text: text.replace(/\s/g, '') };
}

function streamOf(body: string): string {
  const found = /stream\r?\n([\s\S]*?)\r?\n?endstream/.exec(body);
  if (!found) return '';
  if (!body.includes('FlateDecode')) return found[1];
  try {
    return inflateSync(Buffer.from(found[1], 'latin1')).toString('latin1');
  } catch {
    return '';
  }
}

function charactersOf(cmap: string): Map<number, string> {
  const characters = new Map<number, string>();
  const text = (hex: string) => Buffer.from(hex, 'hex').swap16().toString('utf16le');
  for (const [, block] of cmap.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, glyph, to] of block.matchAll(/<(\w+)>\s*<(\w+)>/g))
      characters.set(Number.parseInt(glyph, 16), text(to));
  }
  for (const [, block] of cmap.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, from, last, to] of block.matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w+)>/g)) {
      const first = Number.parseInt(from, 16);
      for (let glyph = first; glyph <= Number.parseInt(last, 16); glyph++)
        characters.set(glyph, String.fromCharCode(Number.parseInt(to, 16) + glyph - first));
    }
  }
  return characters;
}

function decoded(hex: string, font: ReadonlyMap<number, string>): string {
  const glyphs = hex.replace(/\s/g, '').match(/.{4}/g) ?? [];
  return glyphs.map((glyph) => font.get(Number.parseInt(glyph, 16)) ?? '').join('');
}
