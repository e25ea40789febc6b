import { type AtlasRegionName, atlasRegionNames, atlasRegions, regionAbout } from '@neckfall/answers';
import type { GridPoint, Region } from '@neckfall/engine';
import { type MapShows, mapShows } from '@neckfall/pictures';
import { longestName, plainName, readNumber } from '../../address/form-kinds.ts';
import { asked } from '../../state/route.ts';

/** The part of the Earth shown; `here`: about the reader's place. */
export type ViewName = AtlasRegionName | 'here';

/** The point that is asked about; its name where it is a town of the list. */
export type Cross = GridPoint & { name: string | null };

export function showsAsked(): MapShows {
  return mapShows.find((one) => one === asked.value.shows) ?? 'kind';
}

/** `europe`, or with the point that is asked about `europe~45.76,4.84~Lyon`. What can't be read is left out. */
export function viewAsked(): { view: ViewName; cross: Cross | null } {
  const [name = '', at = '', town = ''] = (asked.value.view ?? '').split('~');
  const views: ViewName[] = [...atlasRegionNames, 'here'];
  const found = views.find((one) => one === name) ?? 'all';
  return { view: found === 'here' && !asked.value.at ? 'all' : found, cross: crossOf(at, town) };
}

export function viewText(view: ViewName, cross: Cross | null): string | null {
  if (view === 'all' && cross === null) return null;
  if (cross === null) return view;
  const { latitudeDeg, longitudeDeg, name } = cross;
  return [view, `${latitudeDeg},${longitudeDeg}`, ...(name === null ? [] : [name.replaceAll('~', ' ')])].join(
    '~',
  );
}

export function regionOf(view: ViewName): Region {
  if (view !== 'here') return atlasRegions[view];
  return asked.value.at ? regionAbout(asked.value.at) : atlasRegions.all;
}

function crossOf(at: string, town: string): Cross | null {
  const [latitudeDeg, longitudeDeg, more] = at.split(',').map(readNumber);
  if (latitudeDeg == null || longitudeDeg == null || more !== undefined) return null;
  if (Math.abs(latitudeDeg) > 90 || Math.abs(longitudeDeg) > 180) return null;
  const name = plainName(town).slice(0, longestName);
  return { latitudeDeg, longitudeDeg, name: name === '' ? null : name };
}
