/** Path of a Chromium on this machine; null where there is none. */
export function findChromium(): string | null;
