import { classOfType, lastLatitude, type OnionType } from '@neckfall/engine';
import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { type as font, Label, lineHeight, Picture } from '../drawing/picture.tsx';
import { textWidth } from '../drawing/text-fit.ts';

/** What does best at a degree; `type` null: no kind comes good. */
type LatitudeBest = { degree: number; type: OnionType | null };
/** Degrees that follow each other and share a name. */
export type LatitudeStretch = { from: number; to: number; text: string };

export type LatitudeLineProps = {
  /** Tells the patterns of pictures on one page apart. */
  id: string;
  /** px; see FitWidth. */
  width: number;
  summary: string;
  /** From the equator on, as many as are known. */
  best: readonly LatitudeBest[];
  stretches: readonly LatitudeStretch[];
  /** Where the reader is, degrees from the equator, with its words. */
  here: { degree: number; text: string };
  /** Words of the degrees marked under the line. */
  ticks: readonly { degree: number; text: string }[];
};

/** As in every picture of a year: a slider under it ends where it ends. */
const sidePad = 6;
const bandTop = 46;
const bandHeight = 26;

/** The way from the equator toward the pole: hatched by the kind that does best, with the place where one stands. */
export function LatitudeLine({ id, width, summary, best, stretches, here, ticks }: LatitudeLineProps) {
  const perDegree = (width - 2 * sidePad) / (lastLatitude + 1);
  const x = (degree: number) => sidePad + degree * perDegree;
  const bottom = bandTop + bandHeight;
  const hereX = x(here.degree + 0.5);
  const half = textWidth(here.text, font.text) / 2 + 4;
  return (
    <Picture name="latitude-line" width={width} height={bottom + 24} summary={summary}>
      <defs>
        <Hatches id={id} />
      </defs>
      {slices(best).map(({ from, to, type }) => (
        <rect
          key={from}
          x={px(x(from))}
          y={bandTop}
          width={px(x(to + 1) - x(from))}
          height={bandHeight}
          fill={type === null ? ink.paper2 : `url(#${id}-${type})`}
        />
      ))}
      <rect
        x={px(x(0))}
        y={bandTop}
        width={px(x(lastLatitude + 1) - x(0))}
        height={bandHeight}
        fill="none"
        stroke={ink.ink2}
        stroke-width={1.2}
      />
      {stretches.map(({ from, to, text }) => (
        <StretchWords key={from} left={x(from)} right={x(to + 1)} text={text} />
      ))}
      {ticks.map(({ degree, text }) => (
        <g key={degree}>
          <path d={`M${px(x(degree + 0.5))} ${bottom}v5`} stroke={ink.ink2} />
          <Label
            x={Math.max(
              textWidth(text, font.small) / 2,
              Math.min(width - textWidth(text, font.small) / 2, x(degree + 0.5)),
            )}
            y={bottom + 19}
            anchor="middle"
            small
            fill={ink.ink2}
          >
            {text}
          </Label>
        </g>
      ))}
      <path d={`M${px(hereX)} 18V${bottom}`} stroke={ink.paper} stroke-width={6} />
      <path d={`M${px(hereX)} 18V${bottom + 4}`} stroke={ink.ink} stroke-width={2.4} />
      <Label x={Math.max(half, Math.min(width - half, hereX))} y={14} anchor="middle" bold>
        {here.text}
      </Label>
    </Picture>
  );
}

/** Words over a stretch that is wide enough for them; what finds no room stands in the table. */
function StretchWords({ left, right, text }: { left: number; right: number; text: string }) {
  if (textWidth(text, font.small) > right - left + 6) return null;
  return (
    <Label x={(left + right) / 2} y={bandTop - lineHeight / 2 + 2} anchor="middle" small fill={ink.ink2}>
      {text}
    </Label>
  );
}

/** Degrees not yet worked out take the nearest one nearer to the equator for the while. */
function slices(best: readonly LatitudeBest[]): { from: number; to: number; type: OnionType | null }[] {
  const all: { from: number; to: number; type: OnionType | null }[] = [];
  best.forEach(({ degree, type }, at) => {
    const to = (best[at + 1]?.degree ?? lastLatitude + 1) - 1;
    const last = all.at(-1);
    if (last && last.type === type) last.to = to;
    else all.push({ from: degree, to, type });
  });
  return all;
}

const slants = { short: 45, intermediate: 0, long: -45 } as const;
/** From one stroke to the next, px: within a slant the later kind is the denser. */
const steps: Readonly<Record<OnionType, number>> = {
  'tropical-short': 9,
  short: 6,
  intermediate: 6,
  'early-long': 9,
  'northern-long': 6,
};

function Hatches({ id }: { id: string }) {
  return (
    <>
      {(Object.keys(steps) as OnionType[]).map((type) => (
        <pattern
          key={type}
          id={`${id}-${type}`}
          width={steps[type]}
          height={steps[type]}
          patternUnits="userSpaceOnUse"
          patternTransform={`rotate(${slants[classOfType[type]]})`}
        >
          <path d={`M${steps[type] / 2} 0V${steps[type]}`} stroke={ink.skin} stroke-width={2} />
        </pattern>
      ))}
    </>
  );
}
