import { linePath, type Point, px } from '../drawing/path.ts';
import { inkings, type MarkLook, type Pen } from './map-marks.ts';

/** Writes marks as one path a look. */
export function svgPen(): Pen & { paths: () => { look: MarkLook; d: string }[] } {
  const written = new Map<MarkLook, string[]>();
  const write = (look: MarkLook, text: string) => {
    const parts = written.get(look);
    if (parts) parts.push(text);
    else written.set(look, [text]);
  };
  return {
    line: (look, from, to) => write(look, linePath([from, to])),
    area: (look, corners) => write(look, `${linePath(corners)}Z`),
    disc: (look, x, y, radius) => write(look, discPath([x, y], radius)),
    paths: () =>
      (Object.keys(inkings) as MarkLook[]).flatMap((look) => {
        const parts = written.get(look);
        return parts ? [{ look, d: parts.join('') }] : [];
      }),
  };
}

function discPath([x, y]: Point, radius: number): string {
  const r = px(radius);
  const wide = px(radius * 2);
  return `M${px(x - radius)} ${px(y)}a${r} ${r} 0 1 0 ${wide} 0a${r} ${r} 0 1 0 -${wide} 0Z`;
}
