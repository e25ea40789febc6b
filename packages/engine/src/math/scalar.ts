/** Radians in a degree. */
export const degreesToRadians = Math.PI / 180;

/** The value, or the limit it lies beyond. */
export function clamp(value: number, low: number, high: number): number {
  return value < low ? low : Math.min(value, high);
}

/** The value within 0…1. */
export function clamp01(value: number): number {
  return value < 0 ? 0 : Math.min(value, 1);
}

/** Straight line from `from` (share 0) to `to` (share 1); not limited outside. */
export function lerp(from: number, to: number, share: number): number {
  return from + (to - from) * share;
}

/** acos for arguments that rounding may push slightly outside ±1. */
export function acosClamped(x: number): number {
  return Math.acos(clamp(x, -1, 1));
}

/** asin for arguments that rounding may push slightly outside ±1. */
export function asinClamped(x: number): number {
  return Math.asin(clamp(x, -1, 1));
}
