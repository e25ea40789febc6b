import { type DayNumber, parseDay } from '../calendar/index.ts';
import { clamp, mean } from '../math/index.ts';
import { daysToTopsOver, topsOverShare } from '../plant/index.ts';
import type { TendedCrop } from '../tend/index.ts';
import { type DryingDays, dryingOf, dryingPlaces, weatherMetFrom } from './drying.ts';
import { liftLosses } from './lift-loss.ts';
import { type LiftRun, liftRun } from './lift-run.ts';
import { chooseLift, liftAhead } from './lift-verdict.ts';

/** `lift`: today is as good as any day that comes; `wait`: it gains by waiting; `before-rain`: early, since what comes is wet; `too-early`: no tops are near falling; `lifted`: it is out. */
export type LiftVerdict = 'lift' | 'wait' | 'before-rain' | 'too-early' | 'lifted';

/** Whether a crop is to be lifted today, with what either choice loses. */
export type LiftAdvice = {
  verdict: LiftVerdict;
  /** The best day from today on; today where the verdict is to lift. */
  best: DayNumber | null;
  /** Share of the plants whose tops are over today. */
  topsOverShare: number;
  /** Whether that was seen by the grower, or is of the run. */
  topsFrom: 'seen' | 'run';
  /** Rain to come in the next ten days, mm, and where that is known from. */
  rainMm: number;
  rainFrom: 'forecast' | 'usual';
  /** Share of the crop's worth lost by lifting today, and by lifting on `best`, 0…1: growth forgone, necks not closed, rot and stain. */
  lossTodayShare: number;
  lossBestShare: number;
  /** Of the bulbs, forecast: to the kitchen first. */
  thickNeckShare: number;
  boltedShare: number;
  drying: readonly DryingDays[];
};

/** A look at the tops tells of today for so many days. */
const lately = 14;
/** A stand judged by eye tells no share finer than this. */
const edge = 0.02;
/** Days of forecast that are looked at for a day to lift. */
export const rainAheadDays = 10;

/** Whether to lift a crop today, and what it is to dry; null where no bulbs come in most seasons. */
export function liftAdvice(crop: TendedCrop): LiftAdvice | null {
  const { site, plan, summary, today, liftedOn } = crop;
  const run = liftRun(site, plan);
  const boltedShare = summary.boltedPlantsShare?.p50 ?? 0;
  if (liftedOn === null && summary.onset.share < 0.5) return null;
  if (run.seasons.length === 0) return null;
  const { seasons, topsFrom } = withTopsSeen(run, crop);
  const on = liftedOn ?? today;
  const shareOn = (day: DayNumber) =>
    mean(seasons.map(({ fallsOn, topples }) => (topples ? topsOverShare(day - fallsOn) : 0)));
  const weather = weatherMetFrom(site, plan, on);
  const rainOf = (season: number) => (day: DayNumber) => weather.rainMm[weather.from(season) + day - on];
  const met = seasons.map(({ season, fallsOn }) => ({ fallsOn, rainMm: rainOf(season) }));
  const losses = liftLosses(met, run.forgone, on, liftAhead);
  const rainMm = mean(
    met.map(({ rainMm }) =>
      Array.from({ length: rainAheadDays }, (_, at) => rainMm(on + 1 + at)).reduce((sum, mm) => sum + mm, 0),
    ),
  );
  const topsOver = shareOn(on);
  const choice = chooseLift({
    losses,
    topsOverShare: topsOver,
    soonShare: shareOn(on + lately),
    rainMm,
    hasBulbs: today > (summary.onset.days?.p50 ?? Number.POSITIVE_INFINITY),
    ripens: summary.neckFall.share >= 0.5 || topsFrom === 'seen',
  });
  const after = liftedOn === null ? choice.after : 0;
  const best = on + after;
  return {
    verdict: liftedOn === null ? choice.verdict : 'lifted',
    best: liftedOn === null ? best : null,
    topsOverShare: topsOver,
    topsFrom,
    rainMm,
    rainFrom: knowsRain(crop, on) ? 'forecast' : 'usual',
    lossTodayShare: losses[0],
    lossBestShare: losses[after],
    // what would not be soft within a week
    thickNeckShare: 1 - shareOn(best + 7),
    boltedShare,
    drying: dryingPlaces.map((place) => dryingOf(site, plan, place, best)),
  };
}

/** Tops that were seen lately say when this stand goes over; none over, or all, tell one side only. */
function withTopsSeen(run: LiftRun, { observations, today, plan, liftedOn }: TendedCrop) {
  const until = liftedOn ?? today;
  const looks = observations
    .filter(({ topsOverShare: share }) => share !== undefined)
    .map((look) => ({ share: look.topsOverShare ?? 0, day: parseDay(look.date) ?? Number.NaN }))
    .filter(({ day }) => day >= plan.startDay && day <= until && day > until - lately)
    .sort((a, b) => a.day - b.day);
  const last = looks.at(-1);
  if (!last) return { seasons: run.seasons, topsFrom: 'run' as const };
  const { share, day } = last;
  const told = day - daysToTopsOver(clamp(share, edge, 1 - edge));
  const seasons = run.seasons.map((season) => ({
    ...season,
    topples: share > edge || season.topples,
    fallsOn:
      share <= edge
        ? Math.max(season.fallsOn, told)
        : share >= 1 - edge
          ? Math.min(season.fallsOn, told)
          : told,
  }));
  return { seasons, topsFrom: 'seen' as const };
}

/** Whether most of the days ahead are in the record: measured, or forecast. */
function knowsRain({ site: { record } }: TendedCrop, from: DayNumber): boolean {
  if (!record) return false;
  let known = 0;
  for (let day = from + 1; day <= from + rainAheadDays; day++)
    known += record.known.rainMm[day - record.firstDay] ?? 0;
  return 2 * known >= rainAheadDays;
}
