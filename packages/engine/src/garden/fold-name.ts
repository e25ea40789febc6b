/** Names that differ in nothing that a reader would notice are one: as they are compared, not as they are shown. */
export function foldName(name: string): string {
  return name.normalize('NFKC').trim().toLowerCase();
}
