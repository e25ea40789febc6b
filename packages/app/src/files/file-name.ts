const longest = 60;

/** A name that every file system takes, from words of the reader's own: letters and digits of any script, and hyphens. */
export function fileName(words: readonly string[], ending: string): string {
  const stem = words
    .map((word) =>
      word
        .normalize('NFKC')
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-+|-+$/g, ''),
    )
    .filter((word) => word !== '')
    .join('-');
  const short = [...stem].slice(0, longest).join('').replace(/-+$/, '');
  return `neckfall${short === '' ? '' : '-'}${short}${ending}`;
}
