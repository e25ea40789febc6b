/** One line after the other, so that no more of them are cut out than are read. */
export function* linesOf(text: string): Generator<string, undefined> {
  const ends = /\r\n|\n|\r/g;
  let from = 0;
  for (let end = ends.exec(text); end !== null; end = ends.exec(text)) {
    yield text.slice(from, end.index);
    from = ends.lastIndex;
  }
  yield text.slice(from);
}

/** The first line that says something; the head of a file is enough to look for it. */
export function firstLineOf(text: string): string {
  for (const line of linesOf(text.slice(0, 4096))) if (line.trim() !== '') return line;
  return '';
}
