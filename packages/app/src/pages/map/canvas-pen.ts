import type { MarkLook, Pen } from '@neckfall/pictures';

type Corners = readonly (readonly [x: number, y: number])[];

/** Gathers marks for a canvas, a path for each look. */
export function canvasPen(): Pen & {
  paths: ReadonlyMap<MarkLook, Path2D>;
  /** Ground that is cleared before. */
  ground: Path2D;
  clear: (corners: Corners) => void;
} {
  const paths = new Map<MarkLook, Path2D>();
  const ground = new Path2D();
  const pathOf = (look: MarkLook) => {
    const path = paths.get(look) ?? new Path2D();
    paths.set(look, path);
    return path;
  };
  return {
    paths,
    ground,
    clear: (corners) => addArea(ground, corners),
    line(look, from, to) {
      const path = pathOf(look);
      path.moveTo(from[0], from[1]);
      path.lineTo(to[0], to[1]);
    },
    area: (look, corners) => addArea(pathOf(look), corners),
    disc(look, x, y, radius) {
      const path = pathOf(look);
      path.moveTo(x + radius, y);
      path.arc(x, y, radius, 0, 2 * Math.PI);
    },
  };
}

function addArea(path: Path2D, [first, ...others]: Corners): void {
  path.moveTo(first[0], first[1]);
  for (const [x, y] of others) path.lineTo(x, y);
  path.closePath();
}
