/** Words as they may stand in SVG, XML and HTML, between tags and in quotes; what XML has no character for is left out. */
export function markupText(text: string): string {
  return text
    .replace(unspeakable, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

/** Control characters and halves of a letter, which no XML may hold (XML 1.0, production 2). */
const unspeakable = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;
