/** The longest that still leave room on one page: words, and characters for words without spaces. */
export const handoutLimits = {
  heading: { words: 14, characters: 90 },
  note: { words: 90, characters: 600 },
} as const;

/** Words and characters of what a teacher wrote, and whether it is too long for its field. */
export function measuredOwn(field: keyof typeof handoutLimits, text: string) {
  const words = text.split(/\s+/).filter((word) => word !== '').length;
  // those of other scripts count once, whatever they take in memory
  const characters = [...text.trim()].length;
  const most = handoutLimits[field];
  return { words, characters, isTooLong: words > most.words || characters > most.characters };
}

/** Spaces and line breaks as a sheet sets them: one paragraph a line. */
export function paragraphsOf(text: string | null): string[] {
  return (text ?? '')
    .split(/[\r\n\u2028\u2029]+/)
    .map((line) => line.replace(/\s+/g, ' ').trim())
    .filter((line) => line !== '');
}
