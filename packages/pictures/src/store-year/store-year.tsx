import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { Label, lineHeight, Picture } from '../drawing/picture.tsx';
import { shapeOfLot } from './bulb-paths.ts';
import { Bulbs, Eaten, Lost } from './bulbs.tsx';
import { keyLayout } from './key-layout.ts';
import { StoreKey } from './store-key.tsx';
import { type Rail, type StoreLayout, storeLayout } from './store-layout.ts';
import type { StoreYearProps } from './store-year-props.ts';

/**
 * A kitchen's year in strings of onions, one on each month's peg. What is in store at its end hangs there, each bulb what
 * the kitchen eats in a week and each lot in a shape of its own; under it, speckled, what was lost in the month, and as
 * outlines what was eaten.
 */
export function StoreYear(props: StoreYearProps) {
  const { width, summary, lots } = props;
  const layout = storeLayout(props);
  const key = keyLayout(props, layout.foot + 10);
  return (
    <Picture name="store-year" width={width} height={key.foot} summary={summary}>
      {layout.rails.map((rail) => (
        <Hung key={rail.y} rail={rail} layout={layout} lots={lots.length} />
      ))}
      <StoreKey layout={key} />
    </Picture>
  );
}

function Hung({ rail, layout, lots }: { rail: Rail; layout: StoreLayout; lots: number }) {
  const { bulb, left, right } = layout;
  const { strings, y, needY, gaps } = rail;
  const spans = strings.flatMap(({ x, span }) => {
    if (!span) return [];
    const at = x + 2 * bulb + 3;
    return [`M${px(at - 2)} ${px(span[0])}h4m-2 0V${px(span[1])}m-2 0h4`];
  });
  return (
    <>
      <path d={`M${px(left)} ${px(y)}H${px(right)}`} stroke={ink.earth} stroke-width={3} />
      <path
        d={strings
          .map(({ x, foot }) => `M${px(x)} ${px(y - 3)}v9V${px(Math.max(y + 9, foot - bulb / 2))}`)
          .join('')}
        stroke={ink.earth}
        stroke-width={1.4}
        fill="none"
      />
      <path
        d={strings.map(({ x }) => `M${px(x)} ${px(y - 4)}v9`).join('')}
        stroke={ink.earth}
        stroke-width={5}
        stroke-linecap="round"
      />
      <path
        d={`M${px(left)} ${px(needY)}H${px(right)}`}
        stroke={ink.leaf}
        stroke-width={1.6}
        stroke-dasharray="7 4"
      />
      <Eaten spots={strings.flatMap(({ eaten }) => eaten)} bulb={bulb} />
      <Lost spots={strings.flatMap(({ lost }) => lost)} bulb={bulb} />
      {Array.from({ length: lots }, (_, lot) => (
        <Bulbs
          key={shapeOfLot(lot)}
          spots={strings.flatMap(({ kept }) => kept[lot])}
          shape={shapeOfLot(lot)}
          bulb={bulb}
        />
      ))}
      <path d={spans.join('')} stroke={ink.ink2} stroke-width={1.2} fill="none" />
      {strings.map(({ x, name }) => (
        <Label key={x} x={x} y={rail.nameY} anchor="middle" small fill={ink.ink2}>
          {name}
        </Label>
      ))}
      {gaps.map(({ left: from, right: to, words }) => (
        <g key={from}>
          <path d={`M${px(from)} ${px(y)}H${px(to)}`} stroke={ink.paper} stroke-width={3} />
          <path
            d={`M${px(from)} ${px(y - 4)}v8M${px(to)} ${px(y - 4)}v8M${px(from)} ${px(y)}H${px(to)}`}
            stroke={ink.alarm}
            stroke-width={2}
            stroke-dasharray="3 3"
            fill="none"
          />
          {words?.lines.map((line, at) => (
            <Label
              key={line}
              x={words.x}
              y={words.y + at * lineHeight}
              anchor="middle"
              small
              fill={ink.alarm}
            >
              {line}
            </Label>
          ))}
        </g>
      ))}
    </>
  );
}
