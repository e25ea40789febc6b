/** Width of a line of text, px: an estimate on the safe side, since a picture is laid out before it is on a page. */
export function textWidth(text: string, fontSize: number): number {
  let ems = 0;
  for (const letter of text) {
    if ("ijltfI.,:;'|()! \u00a0".includes(letter)) ems += 0.33;
    else if (letter >= '⺀') ems += 1;
    else if ('mwMW—'.includes(letter) || (letter >= 'A' && letter <= 'Z')) ems += 0.75;
    else ems += 0.56;
  }
  return ems * fontSize;
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
