import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { Label, lineHeight } from '../drawing/picture.tsx';
import { shapeOfLot } from './bulb-paths.ts';
import { Bulbs, Eaten, Lost } from './bulbs.tsx';
import { type KeyItem, type KeyLayout, signWidth } from './key-layout.ts';

const bulb = 15;

export function StoreKey({ layout }: { layout: KeyLayout }) {
  return (
    <>
      {layout.items.map((item) => (
        <g key={item.lines.join(' ')}>
          <Sign {...item} />
          {item.lines.map((line, at) => (
            <Label
              key={line}
              x={item.x + (item.sign.of === 'week' ? 0 : signWidth)}
              y={item.y + at * lineHeight}
              small
            >
              {line}
            </Label>
          ))}
        </g>
      ))}
    </>
  );
}

function Sign({ sign, x, y }: KeyItem) {
  const spots = [{ x: x + 10, y: y - 5 }];
  switch (sign.of) {
    case 'lot':
      return <Bulbs spots={spots} shape={shapeOfLot(sign.lot)} bulb={bulb} />;
    case 'eaten':
      return <Eaten spots={spots} bulb={bulb} />;
    case 'lost':
      return <Lost spots={spots} bulb={bulb} />;
    case 'need':
      return (
        <path d={`M${px(x)} ${px(y - 5)}h19`} stroke={ink.leaf} stroke-width={1.6} stroke-dasharray="7 4" />
      );
    case 'span':
      return (
        <path
          d={`M${px(x + 8)} ${px(y - 11)}h4m-2 0v12m-2 0h4`}
          stroke={ink.ink2}
          stroke-width={1.2}
          fill="none"
        />
      );
    case 'week':
      return null;
  }
}
