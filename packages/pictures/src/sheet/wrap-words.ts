/**
 * Breaks a line at its spaces into lines no wider than `width`. Spaces that don't break stay whole; a word that is wider
 * than a line by itself is cut where it must be.
 */
export function wrapWords(text: string, width: number, widthOf: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n]+/).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOf(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = cut(word, width, widthOf);
    lines.push(...pieces.slice(0, -1));
    line = pieces[pieces.length - 1];
  }
  return line === '' ? lines : [...lines, line];
}

function cut(word: string, width: number, widthOf: (text: string) => number): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && widthOf(piece + letter) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...pieces, piece];
}
