import type { LandOutline } from '@neckfall/data';
import { fetchLandOutline } from '@neckfall/data/browser';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { voice } from '../state/settings.ts';
import { Fault } from './Fault.tsx';

type Point = { latitudeDeg: number; longitudeDeg: number };
type Props = { onPoint: (point: Point) => void };

/** The map is a plain grid of degrees twice as wide as high: distances are not measured on it. */
const width = 720;
const height = 360;
/** Degrees of longitude from edge to edge. */
const widest = 360;
const closest = 5.625;
const north = 78;
const south = -60;

/** The land, without borders; a tap or the arrow keys set a cross, which a button takes. */
export function LandMap({ onPoint }: Props) {
  const { say, number } = voice.value;
  const [land, setLand] = useState<LandOutline | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const [span, setSpan] = useState(widest);
  const [centre, setCentre] = useState<Point>({ latitudeDeg: 20, longitudeDeg: 0 });
  const [cross, setCross] = useState<Point | null>(null);
  useEffect(() => {
    fetchLandOutline().then(setLand, (error: Error) => setFailed(error.message));
  }, []);
  const path = useMemo(() => (land ? pathOf(land) : ''), [land]);
  if (failed !== null) return <Fault reason={failed} />;
  if (!land) return <p role="status">{say('app.map.loading')}</p>;

  const perDegree = width / span;
  const left = clamp(centre.longitudeDeg - span / 2, -180, 180 - span);
  const top = span >= 2 * (north - south) ? 90 : clamp(centre.latitudeDeg + span / 4, south + span / 2, 90);
  const xOf = (longitude: number) => (longitude - left) * perDegree;
  const yOf = (latitude: number) => (top - latitude) * perDegree;

  function tap(event: MouseEvent): void {
    const box = (event.currentTarget as SVGSVGElement).getBoundingClientRect();
    put({
      longitudeDeg: left + ((event.clientX - box.left) / box.width) * span,
      latitudeDeg: top - ((event.clientY - box.top) / box.height) * (span / 2),
    });
  }

  function put({ latitudeDeg, longitudeDeg }: Point): void {
    const round = (degrees: number) => Math.round(degrees * 100) / 100;
    setCross({
      latitudeDeg: round(clamp(latitudeDeg, -90, 90)),
      longitudeDeg: round(clamp(longitudeDeg, -180, 180)),
    });
  }

  function press(event: KeyboardEvent): void {
    const from = cross ?? centre;
    const step = span / 60;
    const [east, up] = moves[event.key] ?? [0, 0];
    if (event.key === 'Enter' && cross) onPoint(cross);
    else if (event.key === '+') zoom(2);
    else if (event.key === '-') zoom(0.5);
    else if (east || up)
      put({ latitudeDeg: from.latitudeDeg + up * step, longitudeDeg: from.longitudeDeg + east * step });
    else return;
    event.preventDefault();
  }

  function zoom(factor: number): void {
    setCentre(cross ?? centre);
    setSpan(clamp(span / factor, closest, widest));
  }

  return (
    <div class="map">
      <svg
        tabindex={0}
        viewBox={`0 0 ${width} ${height}`}
        role="application"
        aria-label={say('app.map.label')}
        onClick={tap}
        onKeyDown={press}
      >
        <path
          class="land"
          d={path}
          transform={`scale(${perDegree} ${-perDegree}) translate(${-left} ${-top})`}
        />
        {cross && (
          <path
            class="cross"
            d={`M${xOf(cross.longitudeDeg) - 12} ${yOf(cross.latitudeDeg)}h24m-12 -12v24`}
          />
        )}
      </svg>
      <div class="row">
        <button type="button" onClick={() => zoom(2)} disabled={span <= closest}>
          {say('app.map.closer')}
        </button>
        <button type="button" onClick={() => zoom(0.5)} disabled={span >= widest}>
          {say('app.map.wider')}
        </button>
        {cross && (
          <button type="button" onClick={() => onPoint(cross)}>
            {say('app.map.take', {
              point: `${number(cross.latitudeDeg, 2)}°, ${number(cross.longitudeDeg, 2)}°`,
            })}
          </button>
        )}
      </div>
    </div>
  );
}

const moves: Record<string, [east: number, up: number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

function pathOf(land: LandOutline): string {
  return land
    .map((ring) => {
      let path = '';
      for (let at = 0; at < ring.length; at += 2) {
        path += `${at === 0 ? 'M' : 'L'}${ring[at].toFixed(2)} ${ring[at + 1].toFixed(2)}`;
      }
      return `${path}Z`;
    })
    .join('');
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), Math.max(low, high));
}
