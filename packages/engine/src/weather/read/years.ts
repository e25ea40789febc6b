/** Years a record may cover; a mistyped year asks for no endless memory. */
export const firstYear = 1700;
export const lastYear = 2200;
