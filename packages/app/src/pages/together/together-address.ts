import { formatDay, type StartMethod } from '@neckfall/engine';
import { forms } from '../../address/address-form.ts';

/** Lines beyond these are too many to be read together. */
export const mostLines = 6;

/** A place as it stands in a link. */
export type PlaceInLink = { latitudeDeg: number; longitudeDeg: number; name: string | null };
export type StartInLink = { start: StartMethod; startDay: number };

/** What a link holds, what in it could not be read, and what is beyond the six, each as it stood there. */
export type ReadList<Entry> = {
  entries: readonly Entry[];
  unread: readonly string[];
  beyond: readonly string[];
};

/** `45.76,4.84~Lyon;59.91,10.75`: points, each with a name where it has one. */
export function readPlaces(raw: string): ReadList<PlaceInLink> {
  return readList(raw, (part) => {
    const [point, name, more] = part.split('~');
    const at = forms.at.read(point);
    const called = name === undefined ? null : forms.name.read(name);
    return at === undefined || called === undefined || more !== undefined ? null : { ...at, name: called };
  });
}

export function writePlaces(places: readonly PlaceInLink[]): string {
  return places
    .map(({ name, ...at }) => {
      const called = name?.replace(/[;~]/g, ' ').trim();
      return called ? `${forms.at.write(at)}~${called}` : forms.at.write(at);
    })
    .join(';');
}

/** `sets~2027-03-25;direct-seed~2026-08-20` */
export function readStarts(raw: string): ReadList<StartInLink> {
  return readList(raw, (part) => {
    const [way, date, more] = part.split('~');
    const start = forms.start.read(way.trim());
    const startDay = date === undefined ? undefined : forms.date.read(date);
    return start === undefined || startDay === undefined || more !== undefined ? null : { start, startDay };
  });
}

export function writeStarts(starts: readonly StartInLink[]): string {
  return starts.map(({ start, startDay }) => `${start}~${formatDay(startDay)}`).join(';');
}

/** The day that is looked at; null where none is named, or none can be read. */
export function readOn(raw: string | null): number | null {
  return raw === null ? null : (forms.date.read(raw) ?? null);
}

export const writeOn = formatDay;

/** How long a part may be to be told, characters. */
const toldLength = 60;

function readList<Entry>(raw: string, read: (part: string) => Entry | null): ReadList<Entry> {
  const entries: Entry[] = [];
  const unread: string[] = [];
  const beyond: string[] = [];
  for (const part of raw.split(';').map((text) => text.trim())) {
    if (part === '') continue;
    const entry = read(part);
    if (entry === null) unread.push(part.slice(0, toldLength));
    else if (entries.length < mostLines) entries.push(entry);
    else beyond.push(part.slice(0, toldLength));
  }
  return { entries, unread, beyond };
}
