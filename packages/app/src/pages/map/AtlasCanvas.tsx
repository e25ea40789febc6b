import { type GridPoint, gridPoints } from '@neckfall/engine';
import { type MapFrame, type MapShows, pxPerRem } from '@neckfall/pictures';
import { useEffect, useRef, useState } from 'preact/hooks';
import { inkOf } from '../../device/ink-of.ts';
import { theme } from '../../state/settings.ts';
import type { leadsOf } from './atlas-held.ts';
import { openPainter, type Painted, type Painter } from './painter.ts';
import { dotsPerPx, drawnStep } from './steps.ts';
import type { Listener } from './use-atlas.ts';

type Props = {
  frame: MapFrame;
  outline: readonly Float32Array[];
  steps: readonly number[];
  shows: MapShows;
  leads: ReturnType<typeof leadsOf>;
  /** All of this grid is known, degrees. */
  wholeDeg: number | null;
  /** Some of this one is, degrees. */
  workingDeg: number | null;
  listener: { current: Listener | null };
  cross: GridPoint | null;
  onCross: (point: GridPoint) => void;
  onHover: (point: GridPoint | null) => void;
  label: string;
  describedBy: string;
};

const moves: Record<string, [east: number, up: number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** The map as it fills in, with the cross that a finger, a pointer or the arrow keys set. */
export function AtlasCanvas(props: Props) {
  const { frame, outline, steps, shows, leads, wholeDeg, workingDeg, listener, cross, label, describedBy } =
    props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const painter = useRef<Painter | null>(null);
  const painted = useRef<Painted | null>(null);
  const [stands, setStands] = useState(false);
  const [dark, setDark] = useState(isDark);
  useEffect(() => {
    const query = matchMedia('(prefers-color-scheme: dark)');
    const look = () => setDark(isDark());
    query.addEventListener('change', look);
    return () => query.removeEventListener('change', look);
  }, []);

  const scale = dotsPerPx();
  useEffect(() => {
    const opened = openPainter(canvas.current!, frame, outline, scale);
    painter.current = opened;
    setStands(false);
    return () => {
      opened.stop();
      painter.current = null;
    };
  }, [frame, outline, scale]);

  // painted anew when a grid is whole, or something else is to be shown
  const finest = drawnStep(steps, frame, scale);
  useEffect(() => {
    painted.current = { shows, leadAt: leads.leadAt, colours: inkOf(canvas.current!) };
    const step = wholeDeg === null ? null : Math.max(wholeDeg, finest);
    painter.current?.all(step ?? steps[0], painted.current, () => setStands(true));
    if (step !== null && workingDeg !== null && workingDeg >= finest) {
      painter.current?.over(gridPoints(frame.region, workingDeg), workingDeg, painted.current);
    }
  }, [frame, outline, scale, shows, leads, finest, wholeDeg, theme.value, dark]);

  listener.current = {
    found(points, stepDeg) {
      if (stepDeg >= finest && painted.current) painter.current?.over(points, stepDeg, painted.current);
    },
  };

  const pointAt = (event: MouseEvent): GridPoint | null => {
    const box = canvas.current!.getBoundingClientRect();
    const toFrame = frame.width / box.width;
    return frame.groundAt((event.clientX - box.left) * toFrame, (event.clientY - box.top) * toFrame);
  };

  function press(event: KeyboardEvent): void {
    const [east, up] = moves[event.key] ?? [0, 0];
    if (!east && !up) return;
    event.preventDefault();
    const { south, north, west } = frame;
    const by = event.shiftKey ? 5 * finest : finest;
    const from = cross ?? { latitudeDeg: (south + north) / 2, longitudeDeg: frame.meridianDeg };
    const latitudeDeg = Math.min(north, Math.max(south, onGrid(from.latitudeDeg + up * by, by)));
    const along = onGrid(frame.along(from.longitudeDeg) + east * by, by);
    const longitudeDeg = Math.min(frame.east, Math.max(west, along));
    props.onCross({ latitudeDeg, longitudeDeg: turned(longitudeDeg) });
  }

  const [x, y] = cross ? frame.at(cross.latitudeDeg, frame.along(cross.longitudeDeg)) : [0, 0];
  return (
    <div class="atlas-ground" style={{ '--wide': `${frame.width / pxPerRem}rem` }}>
      {/* biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a map is worked like one thing */}
      <canvas
        ref={canvas}
        class="atlas-canvas"
        role="application"
        tabIndex={0}
        aria-label={label}
        aria-describedby={describedBy}
        data-whole={wholeDeg ?? ''}
        data-waiting={stands ? undefined : true}
        style={{ aspectRatio: `${frame.width} / ${frame.height}` }}
        onClick={(event) => {
          const point = pointAt(event);
          if (point) props.onCross(point);
        }}
        onPointerMove={(event) => event.pointerType === 'mouse' && props.onHover(pointAt(event))}
        onPointerLeave={() => props.onHover(null)}
        onKeyDown={press}
      />
      {cross && (
        <svg class="atlas-cross" viewBox={`0 0 ${frame.width} ${frame.height}`} aria-hidden="true">
          <path d={`M${x - 11} ${y}h22m-11 -11v22`} class="under" />
          <path d={`M${x - 11} ${y}h22m-11 -11v22`} />
        </svg>
      )}
    </div>
  );
}

function isDark(): boolean {
  return matchMedia('(prefers-color-scheme: dark)').matches;
}

const onGrid = (degrees: number, stepDeg: number) => Math.round(degrees / stepDeg) * stepDeg;
const turned = (degrees: number) => degrees - 360 * Math.round(degrees / 360);
