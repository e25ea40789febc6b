import { type Garden, type GardenBed, type GardenPlanting, planDefaults } from '@neckfall/engine';
import { type Asked, idInAddress } from '../address/address-form.ts';
import { isAt, isNear } from './near.ts';

/** Addresses hold tenths of an hour. */
const nearHours = 0.1;

/** The bed of a garden that an address names; null too where the sun asked for is not that of the bed. */
export function bedAsked(
  { beds }: Pick<Garden, 'beds'>,
  asked: Pick<Asked, 'bed' | 'sun'>,
): GardenBed | null {
  const bed = asked.bed === null ? undefined : beds.find(({ id }) => id === asked.bed);
  return bed && (bed.sunHours === null || isNear(bed.sunHours, asked.sun, nearHours)) ? bed : null;
}

/** Beds in which a crop at the point of an address may lie. */
export function bedsAt({ beds, places }: Pick<Garden, 'beds' | 'places'>, at: Asked['at']): GardenBed[] {
  const here = new Set(places.filter((place) => isAt(place, at)).map(({ id }) => id));
  return beds.filter(({ placeId }) => placeId !== null && here.has(placeId));
}

type OfBed = Pick<Asked, 'bed' | 'sun' | 'soil' | 'cover' | 'water'>;

/** What an address asks once the crop lies in another bed, or in none: what the bed says, and nothing more of the last one. */
export function intoBed(
  { places }: Pick<Garden, 'places'>,
  asked: OfBed,
  from: GardenBed | null,
  to: GardenBed | null,
): OfBed {
  const said = (bed: GardenBed | null) => ({
    soil: bed?.soil ?? null,
    cover: bed?.cover === 'none' ? null : (bed?.cover ?? null),
    water: bed?.water === 'rain' ? bed.water : null,
  });
  const [old, now] = [said(from), said(to)];
  const taken = <Field extends keyof typeof now>(field: Field) =>
    (to && to[field] !== null) || asked[field] === old[field] ? now[field] : asked[field];
  const placeSun = places.find(({ id }) => id === from?.placeId)?.sunHours ?? null;
  return {
    bed: to && idInAddress(to.id),
    sun: to?.sunHours ?? (from && from.sunHours !== null ? placeSun : asked.sun),
    soil: taken('soil'),
    cover: taken('cover'),
    water: taken('water'),
  };
}

/** What a planting says beside its bed: nothing where both say the same, so that a later change of the bed holds. */
export function besideBed(
  asked: Pick<Asked, 'soil' | 'cover' | 'water'>,
  bed: GardenBed | null,
): Pick<GardenPlanting, 'soil' | 'cover' | 'water'> {
  const { soil, cover, water } = asked;
  if (!bed) return { soil, cover, water };
  return {
    soil: beside(soil, bed.soil, planDefaults.soil),
    cover: beside(cover, bed.cover, planDefaults.cover),
    water: beside(water, bed.water, planDefaults.water),
  };
}

/** An address leaves out what is usual, which a bed need not be. */
function beside<Word extends string>(asked: Word | null, ofBed: Word | null, usual: Word): Word | null {
  const shown = asked ?? usual;
  return shown === (ofBed ?? usual) ? null : shown;
}
