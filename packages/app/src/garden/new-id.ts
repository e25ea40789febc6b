import { drawn } from '../device/drawn.ts';

/** An id that nothing had before. */
export const newId = drawn;
