import type { DayLengthClass } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type AtlasGround, type AtlasPoint, atlasBands, atlasBorders, atlasGround } from '../facts/index.ts';

/** What a map shows; see the pictures' `mapShows`. */
type Shows = 'kind' | 'good' | 'start' | 'tops' | 'size';

/** Latitude of the tropics, degrees. */
const tropicDeg = 23.44;
/** Share of the ground that counts as nearly all of it. */
const nearlyAll = 0.9;
/** Less ground is not worth a word. */
const worthAWord = 0.02;

/** What stands out on a map, worked out from its points: sentences, what matters most first. @param points not empty */
export function atlasLead(
  points: readonly AtlasPoint[],
  { shows, class: only }: { shows: Shows; class: DayLengthClass | null },
  speaker: Speaker,
): string[] {
  const ground = atlasGround(points);
  if (ground.bareShare >= 1 - worthAWord) return [speaker.say('atlas.bare-all')];
  // of one kind alone it is no news that it leads
  const lead = leads[shows === 'kind' && only !== null ? 'good' : shows];
  return [...lead(points, ground, speaker), ...bareSentence(ground, speaker)];
}

type Lead = (points: readonly AtlasPoint[], ground: AtlasGround, speaker: Speaker) => string[];

const leads: Record<Shows, Lead> = {
  kind: kindLead,
  good: goodLead,
  start: (points, _, speaker) => monthLead('start', points, speaker),
  tops: (points, _, speaker) => monthLead('tops', points, speaker),
  size: sizeLead,
};

function kindLead(points: readonly AtlasPoint[], ground: AtlasGround, { say }: Speaker): string[] {
  const [first, second] = (Object.entries(ground.classShares) as [DayLengthClass, number][]).sort(
    ([, a], [, b]) => b - a,
  );
  if (first[1] >= nearlyAll) return [say('atlas.kind.one', { kind: first[0] })];
  const halves = halvesOf(points).flatMap(({ half, held }) => {
    const { longFromDeg, shortToDeg } = atlasBorders(held);
    if (longFromDeg === null && shortToDeg === null) return [];
    return [
      say(`atlas.kind.${half}`, {
        long: longFromDeg ?? 'none',
        short: shortToDeg ?? 'none',
        between: longFromDeg === shortToDeg ? 'no' : 'yes',
      }),
    ];
  });
  if (halves.length > 0) return halves;
  return [
    say('atlas.kind.two', {
      first: first[0],
      second: second[0],
      tenths: tenths(first[1]),
    }),
  ];
}

function goodLead(points: readonly AtlasPoint[], ground: AtlasGround, speaker: Speaker): string[] {
  const { say, years } = speaker;
  const bands = atlasBands(points);
  const best = bands.reduce((a, b) => (b.goodShare > a.goodShare ? b : a));
  const least = bands.reduce((a, b) => (b.goodShare < a.goodShare ? b : a));
  const mean = say('atlas.good', { years: years(ground.goodShare, null) });
  if (best === least || best.goodShare - least.goodShare < 0.1) return [mean];
  return [
    mean,
    say('atlas.good.bands', {
      best: bandName(best, speaker),
      bestYears: years(best.goodShare, null),
      least: bandName(least, speaker),
      leastYears: years(least.goodShare, null),
    }),
  ];
}

function monthLead(what: 'start' | 'tops', points: readonly AtlasPoint[], { say }: Speaker): string[] {
  return zonesOf(points).flatMap(({ zone, held }) => {
    const { startMonth, topsMonth } = atlasGround(held);
    const month = what === 'start' ? startMonth : topsMonth;
    return month === null ? [] : [say(`atlas.${what}`, { zone, month: String(month) })];
  });
}

function sizeLead(points: readonly AtlasPoint[], ground: AtlasGround, speaker: Speaker): string[] {
  const { say, quantity } = speaker;
  if (ground.bulbDiameterMm === null) return [say('atlas.bare-all')];
  const mean = say('atlas.size', { size: quantity('bulbLength', ground.bulbDiameterMm) });
  const bands = atlasBands(points).flatMap((band) =>
    band.bulbDiameterMm === null ? [] : [{ ...band, size: band.bulbDiameterMm }],
  );
  const largest = bands.reduce((a, b) => (b.size > a.size ? b : a));
  const smallest = bands.reduce((a, b) => (b.size < a.size ? b : a));
  if (largest.size - smallest.size < 5) return [mean];
  return [
    mean,
    say('atlas.size.bands', {
      largest: bandName(largest, speaker),
      largestSize: quantity('bulbLength', largest.size),
      smallest: bandName(smallest, speaker),
      smallestSize: quantity('bulbLength', smallest.size),
    }),
  ];
}

function bareSentence({ bareShare }: AtlasGround, { say }: Speaker): string[] {
  return bareShare < worthAWord ? [] : [say('atlas.bare', { tenths: tenths(bareShare) })];
}

const tenths = (share: number) => Math.round(share * 10);

function halvesOf(points: readonly AtlasPoint[]) {
  return [
    { half: 'north' as const, held: points.filter(({ latitudeDeg }) => latitudeDeg >= 0) },
    { half: 'south' as const, held: points.filter(({ latitudeDeg }) => latitudeDeg < 0) },
  ];
}

/** The tropics apart from what lies north and south of them; `one` where all points lie in one zone. */
function zonesOf(points: readonly AtlasPoint[]) {
  const zones = [
    { zone: 'north', held: points.filter(({ latitudeDeg }) => latitudeDeg > tropicDeg) },
    { zone: 'tropics', held: points.filter(({ latitudeDeg }) => Math.abs(latitudeDeg) <= tropicDeg) },
    { zone: 'south', held: points.filter(({ latitudeDeg }) => latitudeDeg < -tropicDeg) },
  ].filter(({ held }) => held.length > 0);
  return zones.length === 1 ? [{ zone: 'one', held: points }] : zones;
}

/** "from 40° N to 50° N" */
export function bandName(
  { southDeg, northDeg }: { southDeg: number; northDeg: number },
  { say }: Pick<Speaker, 'say'>,
): string {
  const side = southDeg < 0 ? 'south' : 'north';
  const [low, high] = [
    Math.min(Math.abs(southDeg), Math.abs(northDeg)),
    Math.max(Math.abs(southDeg), Math.abs(northDeg)),
  ];
  return say('atlas.band', { low, high, side });
}
