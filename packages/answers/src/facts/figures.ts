/** Figures with more digits than these would pretend to a precision the model has not. */
export function round(value: number, digits = 3): number {
  const scale = 10 ** digits;
  // + 0 turns −0 into 0
  return Math.round(value * scale) / scale + 0;
}
