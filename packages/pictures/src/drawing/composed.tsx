import type { VNode } from 'preact';
import { type Drawn, type DrawnNode, drawnOf, svgIn } from './drawn.ts';
import { ink } from './ink.ts';
import { px } from './path.ts';
import { type as font, Label, lineHeight } from './picture.tsx';
import { wrapText } from './text-fit.ts';

/** A picture with words over it. */
export type Headed = { head: string; words: string; picture: VNode };

/** Room over a head, under the words, and beside both, px. */
const headRoom = 26;
const wordsFoot = 8;
const sidePad = 6;

/** Pictures under each other, as one to be kept. @throws Error where one draws no `<svg>` */
export function stacked(width: number, parts: readonly Headed[]): VNode {
  let height = 0;
  const laid = parts.map(({ head, words, picture }) => {
    const lines = wrapText(words, width - 2 * sidePad, font.small);
    const headY = height + headRoom - 4;
    const pictureY = height + headRoom + lines.length * lineHeight + wordsFoot;
    const inner = svgOf(picture);
    height = pictureY + Number(inner.attributes.height);
    return (
      <g key={head}>
        <Label x={sidePad} y={headY} bold>
          {head}
        </Label>
        {lines.map((line, i) => (
          <Label key={line} x={sidePad} y={headY + (i + 1) * lineHeight} small fill={ink.ink2}>
            {line}
          </Label>
        ))}
        {nested(inner, pictureY)}
      </g>
    );
  });
  return whole(width, height, laid);
}

/** Pictures of one size over each other, as one to be kept. @throws Error where one draws no `<svg>` */
export function overlaid(pictures: readonly VNode[]): VNode {
  const inners = pictures.map(svgOf);
  const { width, height } = inners[0].attributes;
  return whole(
    Number(width),
    Number(height),
    inners.map((inner) => nested(inner, 0)),
  );
}

function whole(width: number, height: number, children: VNode[]): VNode {
  const size = { width: px(width), height: px(height) };
  return (
    <svg {...size} aria-hidden="true" viewBox={`0 0 ${size.width} ${size.height}`} font-size={font.text}>
      {children}
    </svg>
  );
}

function svgOf(picture: VNode): Drawn {
  const svg = svgIn(drawnOf(picture));
  if (svg === null) throw new Error('a picture to be laid beside others: expected an <svg>, got none');
  return svg;
}

function nested({ children }: Drawn, y: number): VNode {
  return <g transform={`translate(0 ${px(y)})`}>{children.map(again)}</g>;
}

function again(node: DrawnNode): VNode | string {
  if (typeof node === 'string') return node;
  const Element = node.type as 'g';
  return <Element {...node.attributes}>{node.children.map(again)}</Element>;
}
