/** Beside the sources as beside the bundle: `src` and `dist` lie at the same depth. */
export const assetsFolder = new URL('../../data/assets/', import.meta.url);

/** Typefaces for sheets to print. */
export const fontsFolder = new URL('../fonts/', import.meta.url);
