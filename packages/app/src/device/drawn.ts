import { drawnId, idBytes } from '@neckfall/engine';

/** What nothing else was ever called, here or elsewhere; see {@link drawnId}. */
export function drawn(): string {
  return drawnId(crypto.getRandomValues(new Uint8Array(idBytes)));
}
