import {
  type DateSpread,
  type DayNumber,
  type Spread,
  type TendedCrop,
  topsBeginDays,
  unnotedDays,
  type WaterAnswer,
  type WaterToday,
} from '@neckfall/engine';
import type { MessageKey, Speaker } from '@neckfall/words';

/** What is told of a crop beside its water. */
type Watered = Pick<TendedCrop, 'plan' | 'summary' | 'today' | 'liftedOn'>;

/** Whether it asks for water today, how much, when next and until when; the answer first. */
export function waterSentences(water: WaterAnswer, crop: Watered, speaker: Speaker): string[] {
  const { say } = speaker;
  const told = toldOf(water, crop, speaker);
  return crop.plan.water === 'rain' && water.seasonMm && crop.liftedOn === null
    ? [...told, say('watering.rain-alone')]
    : told;
}

function toldOf(water: WaterAnswer, { plan, summary, today, liftedOn }: Watered, speaker: Speaker): string[] {
  const { say, day } = speaker;
  const { next, following, stop, seasonMm } = water;
  if (liftedOn !== null) return [say('watering.lifted', { date: day(liftedOn) })];
  if (!seasonMm) return [say('watering.nothing-stands')];
  const stops = stop.days ? [say('watering.stop', whenIs(stop.days, speaker))] : [];
  const inBed = summary.plantOut?.days?.p50 ?? plan.startDay;
  if (!water.today) {
    if (today >= inBed) return [say('watering.stopped')];
    const first = next.days ? [say('watering.first', whenIs(next.days, speaker))] : [];
    return [say('watering.before', { date: day(inBed) }), ...first, ...stops];
  }
  if (!water.today.waterNow)
    return [notYet(water.today, speaker), dueSentence(next, summary.years, speaker), ...stops];
  const { depletionMm, readilyAvailableMm } = water.today;
  return [
    nowSentence(water.today, water.watering, speaker),
    say('watering.now-why', depths(depletionMm, readilyAvailableMm, speaker)),
    following.days ? say('watering.lasts', whenIs(following.days, speaker)) : say('watering.rain-does'),
    ...stops,
  ];
}

function nowSentence(
  { litresPerM2, litresForBed, minutes }: WaterToday,
  way: WaterAnswer['watering'],
  { say, quantity }: Speaker,
): string {
  return say('watering.now', {
    onArea: quantity('waterOnArea', litresPerM2),
    isBed: litresForBed === null ? 'no' : 'yes',
    bed: quantity('bedWater', litresForBed ?? 0),
    minutes: minutes === null ? 0 : Math.max(1, Math.round(minutes)),
    way,
  });
}

/** Water short of a full bed that is not worth a word, mm. */
const nearlyFullMm = 1;

function notYet({ depletionMm, readilyAvailableMm }: WaterToday, speaker: Speaker): string {
  const { say } = speaker;
  return depletionMm < nearlyFullMm
    ? say('watering.full')
    : say('watering.not-yet', depths(depletionMm, readilyAvailableMm, speaker));
}

function dueSentence({ days, share }: DateSpread, tried: number, speaker: Speaker): string {
  const { say, years } = speaker;
  if (!days) return say('watering.rain-does');
  const when = whenIs(days, speaker);
  // rounded to tenths all years are all
  return share < 0.95
    ? say('watering.due-some', { ...when, years: years(share, tried) })
    : say('watering.due', when);
}

function depths(shortMm: number, readilyMm: number, { quantity }: Speaker) {
  return { short: quantity('dayRain', shortMm), readily: quantity('dayRain', readilyMm) };
}

function whenIs({ p10, p50, p90 }: Spread<DayNumber>, { day, dayRange }: Speaker) {
  return { date: day(p50), range: dayRange(p10, p90) };
}

export type WaterRow = { key: MessageKey; title: string; ordinary: string; dry: string };

/** What was given is told where it comes to another sum than the need, by this share of it. */
const tellingShare = 0.05;

/** What a season takes in an ordinary and in a dry year; for the bed where its size is known. */
export function waterRows(water: WaterAnswer, areaM2: number | null, speaker: Speaker): WaterRow[] {
  const { say, quantity } = speaker;
  if (!water.seasonMm) return [];
  const { need, rain, given } = water.seasonMm;
  const row = (key: WaterRow['key'], ordinary: string, dry: string) => ({
    key,
    title: say(key),
    ordinary,
    dry,
  });
  const onArea = ({ p50, p90 }: Spread) =>
    [quantity('waterOnArea', p50), quantity('waterOnArea', p90)] as const;
  const isOtherwise = Math.abs(given.p50 - need.p50) > tellingShare * need.p50;
  return [
    row('watering.row.need', ...onArea(need)),
    ...(areaM2 === null
      ? []
      : [
          row(
            'watering.row.need-bed',
            quantity('bedWater', need.p50 * areaM2),
            quantity('bedWater', need.p90 * areaM2),
          ),
        ]),
    ...(isOtherwise ? [row('watering.row.given', ...onArea(given))] : []),
    row('watering.row.rain', quantity('rain', rain.p50), quantity('rain', rain.p10)),
  ];
}

/** What salt in the water does; null where nothing was said of it. */
export function saltSentence({ salt }: WaterAnswer, { say, number }: Speaker): string | null {
  if (!salt) return null;
  // a share of the water given more: a quarter of it is a third on top of the rest
  const leaching = number((100 * salt.leachingShare) / (1 - salt.leachingShare));
  const percent = Math.round(100 * salt.yieldShare);
  return percent >= 100
    ? say('watering.salt-harmless', { leaching })
    : say('watering.salt', { percent, leaching });
}

/** What an answer on water took for granted. */
export function waterAssumptions(
  { assumed, watering, efficiency }: WaterAnswer,
  { say, number }: Speaker,
): string[] {
  return [
    ...assumed.map((code) => say(`watering.assumed.${code}`, { days: unnotedDays })),
    say('watering.assumed.way', { way: watering, percent: number(100 * efficiency) }),
    say('watering.assumed.bed'),
    say('watering.assumed.method', { days: topsBeginDays }),
  ];
}

/** Where watering can do harm, and whose rules hold. */
export function waterCautions({ say }: Speaker): string[] {
  return [say('watering.caution.rules'), say('watering.caution.grey'), say('watering.caution.salt')];
}
