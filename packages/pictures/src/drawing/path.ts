export type Point = readonly [x: number, y: number];

/** A number as SVG writes it, to a tenth of a pixel. Throws on what is no number, so that no picture is half drawn. */
export function px(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a picture's coordinate must be a number, got ${value}`);
  return String(Math.round(value * 10) / 10 + 0);
}

const at = ([x, y]: Point) => `${px(x)} ${px(y)}`;

export function linePath(points: readonly Point[]): string {
  return points.length === 0 ? '' : `M${points.map(at).join('L')}`;
}

/** The area between a line and a level. */
export function areaPath(points: readonly Point[], level: number): string {
  if (points.length === 0) return '';
  const first = points[0];
  const last = points[points.length - 1];
  return `M${at([first[0], level])}L${points.map(at).join('L')}L${at([last[0], level])}Z`;
}

/**
 * A smooth line through points of rising x that rises and falls only where they do, so a share stays within 0…1.
 * Source: Fritsch & Carlson 1980 in the form of Steffen 1990 (memory).
 */
export function smoothLine(points: readonly Point[]): string {
  if (points.length < 3) return linePath(points);
  const slopes = slopesOf(points);
  let path = `M${at(points[0])}`;
  for (let i = 1; i < points.length; i++) {
    const [x0, y0] = points[i - 1];
    const [x1, y1] = points[i];
    const third = (x1 - x0) / 3;
    path += `C${at([x0 + third, y0 + slopes[i - 1] * third])} ${at([x1 - third, y1 - slopes[i] * third])} ${at([x1, y1])}`;
  }
  return path;
}

export function smoothArea(points: readonly Point[], level: number): string {
  if (points.length === 0) return '';
  const [first] = points[0];
  const [last] = points[points.length - 1];
  return `${smoothLine(points)}L${at([last, level])}L${at([first, level])}Z`;
}

/** The smooth area between two lines over the same x. */
export function smoothBand(upper: readonly Point[], lower: readonly Point[]): string {
  if (upper.length === 0) return '';
  return `${smoothLine(upper)}L${smoothLine(lower.toReversed()).slice(1)}Z`;
}

function slopesOf(points: readonly Point[]): number[] {
  const last = points.length - 1;
  const secant = (i: number) => (points[i + 1][1] - points[i][1]) / (points[i + 1][0] - points[i][0]);
  return points.map((_, i) => {
    if (i === 0 || i === last) return 0;
    const before = secant(i - 1);
    const after = secant(i);
    if (before * after <= 0) return 0;
    return Math.sign(before) * Math.min(Math.abs(before), Math.abs(after), Math.abs(before + after) / 4) * 2;
  });
}
