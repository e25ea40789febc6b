import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { type as font, Label, wideAs } from '../drawing/picture.tsx';
import { boldWidth, textWidth } from '../drawing/text-fit.ts';
import { isClear } from '../drawing/words-box.ts';
import { allWords, waterLevel, type YearLineProps, yearLayout, yearWords } from '../year-line/index.ts';

/** A level that day length reaches or not, with its words. */
export type Waterline = { hours: number; text: string; bold: boolean };

/** From one line of words to the next, px. */
const row = 16;

/**
 * Further levels over a year line, laid out as it is: dotted, each with its words at an end of the year, where days are
 * short and the sky is free.
 */
export function Waterlines({ year, lines }: { year: YearLineProps; lines: readonly Waterline[] }) {
  const layout = yearLayout(year);
  const { axis, height } = layout;
  const words = allWords(yearWords(layout, year));
  const sorted = lines.toSorted((a, b) => b.hours - a.hours);
  const feet = apart(sorted.map(({ hours }) => waterLevel(layout, hours) - 3));
  const wide = Math.max(...sorted.map(({ text }) => textWidth(text, font.small * boldWidth)));
  const isFree = (left: number) =>
    feet.every((y) => words.every((box) => isClear(box, left, y - font.small, left + wide, y + 3)));
  const atRight = isFree(axis.right - wide) || !isFree(axis.left);
  return (
    <svg
      class="waterlines"
      aria-hidden="true"
      viewBox={`0 0 ${px(year.width)} ${px(height)}`}
      width={px(year.width)}
      height={px(height)}
      style={wideAs(year.width)}
    >
      {sorted.map(({ hours, bold }) => {
        const y = px(waterLevel(layout, hours));
        // the chosen one's is the water of the year line
        if (bold) return null;
        return (
          <path
            key={hours}
            d={`M${px(axis.left)} ${y}H${px(axis.right)}`}
            stroke={ink.sky}
            stroke-width={1.3}
            stroke-dasharray="2 4"
          />
        );
      })}
      {sorted.map(({ text, bold }, i) => (
        <Label
          key={text}
          x={atRight ? axis.right : axis.left}
          y={feet[i]}
          anchor={atRight ? 'end' : 'start'}
          small
          bold={bold}
          fill={bold ? ink.ink : ink.sky}
        >
          {text}
        </Label>
      ))}
    </svg>
  );
}

/** Feet of words from the top down, none on another: those that stand too near part evenly. */
export function apart(wanted: readonly number[]): number[] {
  const groups: { sum: number; count: number }[] = [];
  const top = ({ sum, count }: { sum: number; count: number }) => sum / count - ((count - 1) * row) / 2;
  for (const y of wanted) {
    groups.push({ sum: y, count: 1 });
    for (let last = groups.length - 1; last > 0; last--) {
      const [above, below] = [groups[last - 1], groups[last]];
      if (top(above) + above.count * row <= top(below)) break;
      groups.splice(last - 1, 2, { sum: above.sum + below.sum, count: above.count + below.count });
    }
  }
  return groups.flatMap((group) => Array.from({ length: group.count }, (_, i) => top(group) + i * row));
}
