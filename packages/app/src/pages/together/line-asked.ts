import type { PlaceProblem } from '@neckfall/answers';
import type { CropAsked, StartMethod } from '@neckfall/engine';
import { ask, askGround } from '../../ask/ask.ts';
import { siteOn } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import type { BesideReply } from '../../worker/beside.ts';
import type { LocateAsked, Located } from '../../worker/locate.ts';
import type { SiteAsked } from '../../worker/site.ts';
import type { PlaceInLink } from './together-address.ts';

/** A line as it is asked for: a place, and what stands there. */
export type LineAsked = {
  key: string;
  at: LocateAsked;
  crop: CropAsked | null;
  start: StartMethod | null;
  startDay: number | null;
};

/** What became of it. */
export type LineKnown =
  | { state: 'found'; located: Located; site: SiteAsked; reply: BesideReply }
  | { state: 'refused'; problem: PlaceProblem }
  | { state: 'failed'; message: string };

/** A line of requests of our own: other questions of the page do not overtake these, nor these them. */
const topic = 'together';

/** A line for a place of a link; the reader's own stands as high as they said. */
export function lineAt(
  place: PlaceInLink,
  crop: CropAsked | null,
  start: StartMethod | null = null,
  startDay: number | null = null,
): LineAsked {
  const { at: own, elevation, hollow } = asked.value;
  const isOwn = own?.latitudeDeg === place.latitudeDeg && own.longitudeDeg === place.longitudeDeg;
  const at = { ...place, elevationM: isOwn ? elevation : null };
  const key = JSON.stringify([at, crop, start, startDay, hollow, startOptions.value, today.value]);
  return { key, at, crop, start, startDay };
}

/** Null where it was overtaken. */
export async function askLine({ at, crop, start, startDay }: LineAsked): Promise<LineKnown | null> {
  const located = await askGround('locate', at, { topic });
  if (located.state !== 'done') return located.state === 'failed' ? located : null;
  if ('problem' in located.answer) return { state: 'refused', problem: located.answer };
  const site = siteOn(located.answer);
  const reply = await ask(
    'beside',
    { site, today: today.value, options: startOptions.value, crop, start, startDay },
    { topic },
  );
  if (reply.state !== 'done') return reply.state === 'failed' ? reply : null;
  return { state: 'found', located: located.answer, site, reply: reply.answer };
}
