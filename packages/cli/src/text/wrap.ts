const lineWidth = 96;

/** Breaks a sentence into lines; those after the first are set in by `indent` spaces. */
export function wrap(text: string, indent = 0): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > lineWidth - indent) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.join(`\n${' '.repeat(indent)}`);
}
