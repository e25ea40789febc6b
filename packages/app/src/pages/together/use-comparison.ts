import { type CropAsked, startMethods } from '@neckfall/engine';
import type { Asked } from '../../address/address-form.ts';
import { asked } from '../../state/route.ts';
import type { Compared, LineFound } from './drawn-lines.ts';
import { type LineAsked, type LineKnown, lineAt } from './line-asked.ts';
import { readySets } from './ready-sets.ts';
import { mostLines, type PlaceInLink, type ReadList, readPlaces, readStarts } from './together-address.ts';
import { useLines } from './use-lines.ts';

export type Comparison = {
  compared: Compared;
  /** The places that are compared, as a link has them. */
  places: readonly PlaceInLink[];
  wanted: readonly LineAsked[];
  known: readonly (LineKnown | null)[];
  /** Where starts are compared: what does best at the place, of the onion that is chosen. */
  best: LineFound | null;
  /** Parts of the link that are left out. */
  unread: readonly string[];
  beyond: readonly string[];
};

/** What the address asks to be set beside each other, and what is known of it. */
export function useComparison(): Comparison {
  const { starts, class: chosen, start } = asked.value;
  const own = ownPlace(asked.value);
  const crop: CropAsked | null = chosen === null ? null : { class: chosen };
  const places = placesAsked(asked.value);
  const isStarts = starts !== null && own !== null;
  const leading = isStarts ? [lineAt(own, crop)] : [];
  const leader = useLines(leading)[0] ?? null;
  const best = leader?.state === 'found' ? leader : null;
  const listed = isStarts && starts !== '' ? readStarts(starts) : { entries: [], unread: [], beyond: [] };
  const wanted = isStarts
    ? best
      ? startLines(own, crop ?? { class: best.reply.class }, starts === '' ? null : listed.entries)
      : leading
    : places.entries.map((place) => lineAt(place, crop, crop && start));
  const others = useLines(isStarts && !best ? [] : wanted);
  const { unread, beyond } = isStarts ? listed : places;
  return {
    compared: isStarts ? 'starts' : 'places',
    places: places.entries,
    wanted,
    known: isStarts && !best ? [leader] : others,
    best,
    unread,
    beyond,
  };
}

export function ownPlace({ at, name }: Asked): PlaceInLink | null {
  return at && { ...at, name };
}

/** Those of the link; where it has none, the reader's own place and two that teach something. */
function placesAsked(asked: Asked): ReadList<PlaceInLink> {
  if (asked.places !== null) return readPlaces(asked.places);
  const own = ownPlace(asked);
  const ready = readySets[0].places.filter((place) => !own || !isSame(place, own));
  return { entries: [...(own ? [own] : []), ...ready].slice(0, mostLines), unread: [], beyond: [] };
}

/** @param starts null: each way to start, on its best day */
function startLines(
  own: PlaceInLink,
  crop: CropAsked,
  starts: ReturnType<typeof readStarts>['entries'] | null,
): LineAsked[] {
  return starts
    ? starts.map(({ start, startDay }) => lineAt(own, crop, start, startDay))
    : startMethods.map((start) => lineAt(own, crop, start));
}

/** To the last digit of a link. */
const sameDeg = 5e-5;

export function isSame(a: PlaceInLink, b: PlaceInLink): boolean {
  return (
    Math.abs(a.latitudeDeg - b.latitudeDeg) < sameDeg && Math.abs(a.longitudeDeg - b.longitudeDeg) < sameDeg
  );
}
