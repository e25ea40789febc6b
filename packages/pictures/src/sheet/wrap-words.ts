/**
 * Breaks a line at its spaces into lines no wider than `width`. Spaces that don't break stay whole; a word that is wider
 * than a line by itself is cut where it must be.
 *
 * @param widthOf of a word, and of a space
 */
export function wrapWords(text: string, width: number, widthOf: (word: string) => number): string[] {
  const space = widthOf(' ');
  const lines: string[] = [];
  let line: string[] = [];
  let filled = 0;
  const add = (word: string, wide: number) => {
    const longer = line.length === 0 ? wide : filled + space + wide;
    if (line.length > 0 && longer > width) {
      lines.push(line.join(' '));
      line = [];
    }
    filled = line.length === 0 ? wide : longer;
    line.push(word);
  };
  for (const word of text.split(/[ \n]+/)) {
    if (word === '') continue;
    const wide = widthOf(word);
    if (wide <= width) add(word, wide);
    else for (const piece of cut(word, width, widthOf)) add(piece, widthOf(piece));
  }
  return line.length === 0 ? lines : [...lines, line.join(' ')];
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
