import type { Speaker } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';
import { parseChoice } from '../values/choice.ts';
import type { RawOutputOptions } from './place-options.ts';
import type { RawPlanOptions } from './plan-options.ts';

/** The year of a place or a crop, the bulbs of a crop, the starts of a year. */
const pictures = ['year', 'bulbs', 'starts'] as const;
export type PictureName = (typeof pictures)[number];

/** The files a picture may be written as, by the ending of their names; without a file it is drawn as text (SVG). */
const endings = ['svg', 'png', 'html'] as const;
export type PictureForm = (typeof endings)[number] | 'json';

export type RawPicture = RawPlanOptions & RawOutputOptions & { picture?: string };

export function readPicture({ picture = 'year' }: RawPicture, speaker: Speaker): PictureName {
  return parseChoice(picture, '--picture', pictures, speaker);
}

/** The picture that a file is meant to be by its name; null where it is none. */
export function pictureEnding(out: string | undefined): (typeof endings)[number] | null {
  return endings.find((known) => out?.toLowerCase().endsWith(`.${known}`)) ?? null;
}

export function readPictureForm({ out, json }: RawPicture, speaker: Speaker): PictureForm {
  if (json) return 'json';
  if (out === undefined) return 'svg';
  const ending = pictureEnding(out);
  if (ending) return ending;
  throw refuse('picture-ending', {
    field: '--out',
    values: { value: out },
    expected: speaker.any(endings.map((known) => `.${known}`)),
  });
}

/** Whether a crop is asked for rather than what the place would be advised. */
export function isOfCrop({ start, date, cultivar, packetHours, packetDays, ...raw }: RawPicture): boolean {
  return [start, date, cultivar, packetHours, packetDays, raw.class].some((value) => value !== undefined);
}
