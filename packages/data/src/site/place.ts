import type { ClimatePoint } from '@neckfall/engine';
import type { Town } from '../places/index.ts';

/** A place that can be planned for. */
export type Place = {
  /** The town asked for; null for a bare point. */
  town: Town | null;
  /** For a bare point, the nearest town. */
  near: { town: Town; distanceKm: number } | null;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  /** IANA name: the town's, or the nearest town's. */
  timeZone: string;
  /** Without any warming offset. */
  climate: ClimatePoint;
  elevationFrom: 'town' | 'near-town' | 'node' | 'given';
  /** Other places of the same name. */
  others: readonly Town[];
};
