import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import {
  bulbHeightMm,
  drawnAcrossMm,
  heightIn,
  type NeckForm,
  necks,
  ringShares,
  scaleContour,
} from './contour.ts';
import { leafPaint, type Onion, type OnionShape, onionPaint } from './onion.ts';

type ShapeProps = { onion: Onion; x: number; baseY: number; pxPerMm: number };

/** Height of what is drawn above the baseline, mm. */
export function onionHeightMm(onion: Onion): number {
  const { form } = onion;
  if (form === 'green') return greenHeightMm;
  if (form === 'lost') return lostHeightMm;
  if (form === 'thick-neck') return bulbHeightMm(onion, necks.thick) + bladeMm;
  if (form === 'bolted') return bulbHeightMm(onion, necks.closed) + stalkMm;
  return bulbHeightMm(onion, necks.closed) + tuftShare * (drawnAcrossMm(onion) / 2) + 1;
}

const rootMm = 7;
/** Height of a dried neck's end, in radii of the bulb. */
const tuftShare = 0.26;
const bladeMm = 26;
const stalkMm = 44;
const greenHeightMm = 88;
const lostHeightMm = 24;

/** One onion cut through, standing on the baseline. */
export function CutOnion(props: ShapeProps) {
  if (props.onion.form === 'green') return <GreenOnion {...props} />;
  if (props.onion.form === 'lost') return <LostPlant {...props} />;
  return <Bulb {...props} />;
}

function Bulb({ onion, x, baseY, pxPerMm }: ShapeProps) {
  const { form, colour, shape, ringLeaves, skins } = onion;
  const paint = onionPaint[colour];
  const neck: NeckForm = form === 'thick-neck' ? necks.thick : necks.closed;
  const radiusMm = drawnAcrossMm(onion) / 2;
  const radius = radiusMm * pxPerMm;
  const neckTop = radius * heightIn(shape, neck.top);
  const shares = ringShares(ringLeaves, skins, radiusMm);
  const contour = (share: number) => scaleContour(x, baseY, radius, share, neck, shape);
  const line = Math.min(1.2, Math.max(0.7, radius / 60));
  return (
    <g stroke-linejoin="round">
      <Roots x={x} baseY={baseY} half={radius * 0.17} length={rootMm * pxPerMm} />
      {form === 'thick-neck' && (
        <Blades x={x} topY={baseY - neckTop} half={radius * neck.half * 0.85} length={bladeMm * pxPerMm} />
      )}
      {shares.skins.map((share, i) => (
        <path
          key={share}
          d={contour(share)}
          fill={paint.skin}
          stroke={paint.skinLine}
          stroke-width={i === 0 ? line * 1.3 : line * 0.7}
        />
      ))}
      {shares.rings.map((share, i) => (
        <path
          key={share}
          d={contour(share)}
          fill={i % 2 === 0 ? paint.flesh : paint.flesh2}
          stroke={paint.edge}
          stroke-width={line}
        />
      ))}
      <Heart x={x} baseY={baseY} radius={radius} shape={shape} />
      {form === 'bolted' ? (
        <Stalk x={x} baseY={baseY} radius={radius} top={neckTop + stalkMm * pxPerMm} />
      ) : (
        form === 'bulb' && (
          <NeckTuft x={x} y={baseY - neckTop} radius={radius} fill={paint.skin} line={paint.skinLine} />
        )
      )}
      <path
        d={`M${px(x - radius * 0.19)} ${px(baseY)}Q${px(x)} ${px(baseY - radius * 0.3)} ${px(x + radius * 0.19)} ${px(baseY)}Q${px(x)} ${px(baseY + radius * 0.06)} ${px(x - radius * 0.19)} ${px(baseY)}Z`}
        fill="#d8c49a"
        stroke={paint.skinLine}
        stroke-width={line * 0.8}
      />
    </g>
  );
}

function Roots({ x, baseY, half, length }: { x: number; baseY: number; half: number; length: number }) {
  const strands = [-1, -0.62, -0.3, 0.05, 0.36, 0.66, 1];
  const path = strands
    .map((at, i) => {
      const long = length * (0.7 + 0.3 * ((i * 0.618) % 1));
      return `M${px(x + at * half)} ${px(baseY - 1)}q${px(at * 2)} ${px(long * 0.5)} ${px(at * half * 0.8 + ((i % 2) * 3 - 1.5))} ${px(long)}`;
    })
    .join('');
  return <path d={path} fill="none" stroke={ink.ink2} stroke-width={0.9} stroke-linecap="round" />;
}

type HeartProps = { x: number; baseY: number; radius: number; shape: OnionShape };

/** The growing point, from which the next year's leaves and flower would come. */
function Heart({ x, baseY, radius, shape }: HeartProps) {
  const at = (u: number, v: number) => `${px(x + u * radius)} ${px(baseY - heightIn(shape, v) * radius)}`;
  const d = `M${at(-0.05, 0.16)}C${at(-0.13, 0.45)} ${at(-0.07, 0.8)} ${at(0, 1.12)}C${at(0.07, 0.8)} ${at(0.13, 0.45)} ${at(0.05, 0.16)}Z`;
  return (
    <path d={d} fill={leafPaint.pale} stroke={leafPaint.blade} stroke-width={0.7} stroke-opacity={0.6} />
  );
}

/** The end of a ripe neck, dried to paper and gone over to one side. */
function NeckTuft({
  x,
  y,
  radius,
  fill,
  line,
}: {
  x: number;
  y: number;
  radius: number;
  fill: string;
  line: string;
}) {
  const at = (u: number, v: number) => `${px(x + u * radius)} ${px(y - v * radius)}`;
  const d =
    `M${at(-0.085, -0.02)}C${at(-0.08, 0.12)} ${at(0.0, 0.24)} ${at(0.2, 0.25)}Q${at(0.34, 0.24)} ${at(0.44, 0.1)}` +
    `Q${at(0.33, 0.17)} ${at(0.24, 0.15)}Q${at(0.29, 0.1)} ${at(0.31, 0.0)}Q${at(0.2, 0.13)} ${at(0.12, 0.1)}Q${at(0.09, 0.06)} ${at(0.085, -0.02)}Z`;
  return <path d={d} fill={fill} stroke={line} stroke-width={0.8} />;
}

/** Green leaves cut off above a neck that never closed. */
function Blades({ x, topY, half, length }: { x: number; topY: number; half: number; length: number }) {
  return (
    <>
      {[-1, 1, -0.45, 0.5, 0].map((lean) => {
        const foot = x + lean * half * 0.7;
        const tip = x + lean * (half + length * 0.55);
        const w = half * 0.34;
        const y = topY - length * (1 - 0.2 * Math.abs(lean));
        return (
          <path
            key={lean}
            d={`M${px(foot - w)} ${px(topY + 4)}Q${px(foot - w)} ${px((topY + y) / 2)} ${px(tip - w * 0.9)} ${px(y)}L${px(tip + w * 0.9)} ${px(y + w * 0.5)}Q${px(foot + w)} ${px((topY + y) / 2)} ${px(foot + w)} ${px(topY + 4)}Z`}
            fill={leafPaint.blade}
            stroke={leafPaint.line}
            stroke-width={0.9}
          />
        );
      })}
    </>
  );
}

/** The hollow flower stalk through a bolted bulb, with its bud. */
function Stalk({ x, baseY, radius, top }: { x: number; baseY: number; radius: number; top: number }) {
  const half = Math.max(3, radius * 0.15);
  const y = baseY - top + half * 2.6;
  const foot = baseY - radius * 0.16;
  const wall = half * 0.36;
  return (
    <>
      <path
        d={`M${px(x - half * 0.7)} ${px(foot)}C${px(x - half * 1.7)} ${px((foot + y) / 2)} ${px(x - half)} ${px((foot + y) / 2)} ${px(x - half * 0.6)} ${px(y)}H${px(x + half * 0.6)}C${px(x + half)} ${px((foot + y) / 2)} ${px(x + half * 1.7)} ${px((foot + y) / 2)} ${px(x + half * 0.7)} ${px(foot)}Z`}
        fill={leafPaint.blade}
        stroke={leafPaint.line}
        stroke-width={1}
      />
      <path
        d={`M${px(x)} ${px(foot - wall * 2)}C${px(x - half * 1.2 + wall)} ${px((foot + y) / 2)} ${px(x - half + wall * 1.6)} ${px((foot + y) / 2)} ${px(x)} ${px(y + wall * 2)}C${px(x + half - wall * 1.6)} ${px((foot + y) / 2)} ${px(x + half * 1.2 - wall)} ${px((foot + y) / 2)} ${px(x)} ${px(foot - wall * 2)}Z`}
        fill={ink.paper}
        stroke={leafPaint.line}
        stroke-width={0.7}
      />
      <path
        d={`M${px(x - half * 0.6)} ${px(y)}C${px(x - half * 2)} ${px(y - half * 1.4)} ${px(x - half)} ${px(y - half * 2.2)} ${px(x)} ${px(y - half * 2.6)}C${px(x + half)} ${px(y - half * 2.2)} ${px(x + half * 2)} ${px(y - half * 1.4)} ${px(x + half * 0.6)} ${px(y)}Z`}
        fill={leafPaint.pale}
        stroke={leafPaint.line}
        stroke-width={1}
      />
    </>
  );
}

/** A plant that made no bulb: a stem of sheaths within sheaths, and its leaves. */
function GreenOnion({ onion, x, baseY, pxPerMm }: ShapeProps) {
  const half = Math.max(3, (onion.acrossMm / 2) * pxPerMm);
  const stem = 48 * pxPerMm;
  const top = baseY - stem;
  const sheaths = Math.min(4, onion.ringLeaves.length);
  const edge = onionPaint[onion.colour].edge;
  const sheath = (share: number) => {
    const foot = half * 1.12 * share;
    const up = half * 0.86 * share;
    return `M${px(x - foot * 0.5)} ${px(baseY)}C${px(x - foot)} ${px(baseY)} ${px(x - foot * 1.1)} ${px(baseY - half)} ${px(x - up)} ${px(baseY - half * 3)}L${px(x - up)} ${px(top)}H${px(x + up)}L${px(x + up)} ${px(baseY - half * 3)}C${px(x + foot * 1.1)} ${px(baseY - half)} ${px(x + foot)} ${px(baseY)} ${px(x + foot * 0.5)} ${px(baseY)}Z`;
  };
  return (
    <g stroke-linejoin="round">
      <Roots x={x} baseY={baseY} half={half * 0.5} length={rootMm * pxPerMm} />
      <Blades x={x} topY={top} half={half * 0.9} length={(greenHeightMm - 48) * pxPerMm} />
      {Array.from({ length: sheaths }, (_, i) => (
        <path
          key={sheaths - i}
          d={sheath(1 - i / sheaths)}
          fill={i % 2 === 0 ? onionPaint.white.flesh : leafPaint.pale}
          stroke={edge}
          stroke-width={0.9}
        />
      ))}
    </g>
  );
}

/** Where a plant stood that winter took: its place, and a withered leaf. */
function LostPlant({ x, baseY, pxPerMm }: ShapeProps) {
  const s = pxPerMm;
  return (
    <g fill="none" stroke={ink.ink2} stroke-width={1.2} stroke-linecap="round">
      <ellipse cx={px(x)} cy={px(baseY - 8 * s)} rx={px(9 * s)} ry={px(8 * s)} stroke-dasharray="2 4" />
      <path
        d={`M${px(x)} ${px(baseY - 1)}c${px(-1 * s)} ${px(-9 * s)} ${px(3 * s)} ${px(-14 * s)} ${px(8 * s)} ${px(-14 * s)}s${px(6 * s)} ${px(5 * s)} ${px(4 * s)} ${px(9 * s)}`}
        stroke={ink.earth}
        stroke-width={2.4}
      />
    </g>
  );
}
