import type { DayNumber } from '../calendar/index.ts';
import { type CultivarTraits, classOfType, type OnionType, type StartMethod } from '../plant/index.ts';
import type { Site } from '../season/index.ts';
import { type CropAsked, cropAt, usesAt } from './asked-crop.ts';

/** One way to grow an onion: the plant, how it is started, and on which days that is usual. */
export type Way = {
  type: OnionType;
  traits: CultivarTraits | null;
  start: StartMethod;
  /** Whether growers start it so on that day. */
  isUsual: (startDay: DayNumber) => boolean;
};

const always = () => true;

/** The ways in which an onion can be started at a place; packets of a class hold one type for spring and another for autumn. */
export function waysOf(site: Site, crop: CropAsked, starts: readonly StartMethod[]): Way[] {
  const onion = cropAt(site, crop);
  return starts.flatMap((start) => {
    const uses = usesAt(site, crop, start) ?? [{ type: onion.type, isUsual: always }];
    return uses.map((use) => ({ ...use, traits: onion.traits, start }));
  });
}

/** Whether two ways are the same class started alike: what a grower has in the hand, whatever the season makes of it. */
export function isSameUse(a: Way, b: Way): boolean {
  return a.start === b.start && classOfType[a.type] === classOfType[b.type];
}
