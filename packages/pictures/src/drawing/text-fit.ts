/** Words set bold are so much wider. */
export const boldWidth = 1.08;

/**
 * Width of a line of text, px: an estimate on the safe side, since a picture is laid out before it is on a page. It
 * goes by Helvetica (its published metrics, memory), in which a kept picture may be shown; our own face is narrower.
 */
export function textWidth(text: string, fontSize: number): number {
  let ems = 0;
  for (const letter of text) ems += widthOf(letter);
  return ems * fontSize;
}

function widthOf(letter: string): number {
  if ("ijltfI.,:;'|!/ \u00a0".includes(letter)) return 0.28;
  if ('r-()'.includes(letter)) return 0.34;
  if ('cksvxyzJ'.includes(letter)) return 0.5;
  if ('mM'.includes(letter)) return 0.84;
  if ('wGOQ'.includes(letter)) return 0.78;
  if ('W—'.includes(letter)) return 1;
  if (letter >= 'A' && letter <= 'Z') return 0.73;
  return letter >= '⺀' ? 1 : 0.56;
}

/** Breaks a text at its spaces into lines no wider than `width`; a longer word stands alone. */
export function wrapText(text: string, width: number, fontSize: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/ +/)) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && textWidth(longer, fontSize) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
