import { drawnId, idBytes } from '@neckfall/engine';

/** An id that nothing had before; see {@link drawnId}. */
export function newId(): string {
  return drawnId(crypto.getRandomValues(new Uint8Array(idBytes)));
}
