/** The usual way to write a folded name: every word with a capital. Only names written otherwise are stored. */
export function nameFromKey(key: string): string {
  return key.replace(/(^| )[a-z]/g, (start) => start.toUpperCase());
}
