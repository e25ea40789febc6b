import { type Asked, type AskedName, forms } from './address-form.ts';

/** Pages in the head, then those that are reached from others. */
export const pagesInHead = ['where', 'which', 'when', 'season', 'keep', 'why', 'teach'] as const;
/** Those that the Teach page leads to. */
export const pagesToTeach = ['map', 'together', 'latitudes', 'sheet', 'questions'] as const;
export const pageNames = [...pagesInHead, ...pagesToTeach, 'weather', 'about', 'kept'] as const;
export type PageName = (typeof pageNames)[number];

const ofNoPlace: readonly PageName[] = ['teach', 'map', 'together', 'latitudes', 'about', 'kept'];

/** Whether a page says nothing before a place is known. */
export const isOfPlace = (page: PageName): boolean => !ofNoPlace.includes(page);

/** A value of a link that could not be taken, to be told to the reader. */
type Misread = { key: string; value: string; expects: 'number' | 'word' | 'day' | 'point' | 'text' };

export type Address = { page: PageName; asked: Asked; misread: readonly Misread[] };

const names = Object.keys(forms) as AskedName[];

export const nothingAsked = Object.fromEntries(names.map((name) => [name, null])) as Asked;

/**
 * Reads the part of an address after `#`: `/when?at=45.76,4.84&name=Lyon`. It stays in the browser: no server is
 * told the place. Anything that cannot be taken is left out and named.
 */
export function readAddress(hash: string): Address {
  const [path, query = ''] = hash.replace(/^#?\/?/, '').split('?', 2);
  const misread: Misread[] = [];
  const asked: Partial<Record<AskedName, unknown>> = {};
  const params = new URLSearchParams(query);
  for (const name of names) {
    const { key, read, expects } = forms[name];
    const text = params.get(key);
    const value = text === null ? null : read(text);
    if (text !== null && value === undefined) misread.push({ key, value: text.slice(0, 80), expects });
    asked[name] = value ?? null;
  }
  return { page: pageNames.find((page) => page === path) ?? 'where', asked: asked as Asked, misread };
}

/** The same address written out, beginning with `#`. */
export function writeAddress(page: PageName, asked: Asked): string {
  const params = names.flatMap((name) => {
    const value = asked[name];
    if (value === null) return [];
    const { key, write } = forms[name] as { key: string; write: (value: unknown) => string };
    return [`${key}=${readable(write(value))}`];
  });
  return `#/${page}${params.length > 0 ? `?${params.join('&')}` : ''}`;
}

/** Percent signs only where they are needed, so that a link can be read aloud. */
function readable(text: string): string {
  return encodeURIComponent(text).replaceAll('%2C', ',').replaceAll('%20', '+');
}
