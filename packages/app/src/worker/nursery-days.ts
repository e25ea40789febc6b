/** Own seedlings wait in trays for a winter at most; as on the command line. */
export const longestNurseryDays = 270;
