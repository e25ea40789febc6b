import type { AtlasFigures, GridPoint } from '@neckfall/engine';

/** What a map shows of the onions that do best: their kind, good years in ten, best start, tops over, bulb size. */
export const mapShows = ['kind', 'good', 'start', 'tops', 'size'] as const;
export type MapShows = (typeof mapShows)[number];

/** A point with what leads there. */
export type MapPoint = GridPoint & { entry: AtlasFigures };
