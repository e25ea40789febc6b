/**
 * How far a stretch goes on from a date in one direction, 0…most. One date alone that falls short ends no stretch: few
 * seasons were tried, and one bad one more decides it.
 */
export function reach(most: number, isIn: (far: number) => boolean): number {
  let far = 0;
  while (far < most) {
    if (isIn(far + 2)) far += 2;
    else if (isIn(far + 1)) far++;
    else break;
  }
  return far;
}
