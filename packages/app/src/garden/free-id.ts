/** An id that none of these has: `planting-3`. */
export function freeId(kind: string, among: readonly { id: string }[]): string {
  for (let number = among.length + 1; ; number++) {
    const id = `${kind}-${number}`;
    if (!among.some((entry) => entry.id === id)) return id;
  }
}
