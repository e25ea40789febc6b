/** Words set bold are so much wider. */
export const boldWidth = 1.13;

/**
 * Width of a line of text, px: an estimate on the safe side, since a picture is laid out before it is on a page. It
 * goes by the widest of the serif faces a page may be shown in.
 */
export function textWidth(text: string, fontSize: number): number {
  let ems = 0;
  for (const letter of text) ems += widthOf(letter);
  return ems * fontSize;
}

function widthOf(letter: string): number {
  if ("ijlI.,:;'|()! \u00a0".includes(letter)) return 0.34;
  if ('tf-'.includes(letter)) return 0.4;
  if ('rs'.includes(letter)) return 0.5;
  if ('mwMW—'.includes(letter)) return 0.97;
  if (letter >= 'A' && letter <= 'Z') return 0.75;
  return letter >= '⺀' ? 1 : 0.63;
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
