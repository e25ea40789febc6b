/** No letter or digit that is taken for another. */
const letters = 'abcdefghijkmnpqrstuvwxyz23456789';

/** Random bytes that an id takes. */
export const idBytes = 10;

/**
 * An id that nothing had before, here or in another file, and nothing will have again: old links and other tabs may
 * hold the ids of what is gone. Fifty bits, drawn rather than counted, as taking a step back would take back a count.
 *
 * @param drawn {@link idBytes} random bytes
 */
export function drawnId(drawn: Uint8Array): string {
  return Array.from(drawn, (byte) => letters[byte % letters.length]).join('');
}
