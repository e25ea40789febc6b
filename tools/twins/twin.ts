import {
  bulbDiameterMm,
  civilDate,
  climateDayOf,
  type DailyRecord,
  type DayNumber,
  type DayTrace,
  type Draw,
  dayNumber,
  dayTrace,
  emptyRecord,
  formatDay,
  normalCdf,
  type Observation,
  type Outcome,
  openSite,
  type Plan,
  type RandomSource,
  runnerOf,
  stage,
  weatherYears,
} from '../../packages/engine/src/index.ts';
import type { Setting } from './places.ts';

/** A season of the model with hidden plants in hidden weather, which stands for a real one. */
export type Twin = {
  plan: Plan;
  /** Its plants. */
  draw: Draw;
  /** Days on which its bulbs started and its tops went over. */
  onsetDay: DayNumber;
  fellDay: DayNumber;
  trace: DayTrace;
  outcome: Outcome;
  /** The weather it met, as a station without a pyranometer kept it. */
  record: DailyRecord;
};

/** Null where bulbs did not start or tops stayed up. */
export function liveThrough(setting: Setting, year: number, draw: Draw, weatherSeed: number): Twin | null {
  const plan = setting.planIn(year);
  const site = {
    ...openSite({ climate: setting.climate, years: 1, seed: weatherSeed }),
    draws: () => [draw],
  };
  const trace = dayTrace(800);
  const outcome = { ...runnerOf(site, plan).season(0, trace) };
  if (outcome.reached !== stage.fallen) return null;
  const record = recordOf(setting, year, weatherSeed);
  return {
    plan,
    draw,
    onsetDay: plan.startDay + outcome.onsetOn,
    fellDay: plan.startDay + outcome.fellOn,
    trace,
    outcome,
    record,
  };
}

/** What the site's first weather year has, from 1 January of the year on. */
function recordOf({ climate }: Setting, year: number, seed: number): DailyRecord {
  const series = weatherYears(climate, 3, seed);
  const firstDay = dayNumber(year, 1, 1);
  const record = emptyRecord(firstDay, dayNumber(year + 2, 1, 1) - firstDay);
  for (let at = 0; at < record.days; at++) {
    const date = civilDate(firstDay + at);
    if (date.month === 2 && date.day === 29) continue;
    const from = (date.year - year) * 365 + climateDayOf(firstDay + at);
    for (const field of ['tempMinC', 'tempMaxC', 'rainMm'] as const) {
      record[field][at] = series[field][from];
      record.known[field][at] = 1;
    }
  }
  return record;
}

/** What of a record is there on a day. */
export function recordUntil(record: DailyRecord, day: DayNumber): DailyRecord {
  const days = Math.max(1, Math.min(record.days, day - record.firstDay));
  const cut = emptyRecord(record.firstDay, days);
  for (const field of ['tempMinC', 'tempMaxC', 'rainMm'] as const) {
    cut[field].set(record[field].subarray(0, days));
    cut.known[field].set(record.known[field].subarray(0, days));
  }
  return cut;
}

const visits = { firstAfterDays: 21, everyDays: 10, plants: 10 } as const;
/** Plants of a stand differ in leaves by 8 in 100, and one count in five is out by one. */
const leafSpread = 0.08;
const slipShare = 0.2;
const bulbSpread = 0.4 / 3;
const topsSpreadDays = 5;
const calliperMm = 0.5;

/** Days of the visits to a twin, from three weeks after it stands on. */
export function visitDays({ plan, outcome, fellDay }: Twin): DayNumber[] {
  const days: DayNumber[] = [];
  for (
    let day = plan.startDay + outcome.plantedOn + visits.firstAfterDays;
    day <= fellDay + visits.everyDays;
    day += visits.everyDays
  )
    days.push(day);
  return days;
}

/** What a grower notes of ten plants: green leaves and, with callipers, neck and bulb; later the share of tops over. */
export function notesOf(
  twin: Twin,
  random: RandomSource,
): { leaves: Observation[]; widths: Observation[]; tops: Observation[] } {
  const { plan, trace, outcome, fellDay } = twin;
  const neckPerLeafMm = 1.5 + 0.2 * random.normal();
  const ofPlants = (one: () => number) => {
    let sum = 0;
    for (let plant = 0; plant < visits.plants; plant++) sum += one();
    return Math.round((10 * sum) / visits.plants) / 10;
  };
  const noted = (day: DayNumber, what: Partial<Observation>): Observation => ({
    id: `${day}`,
    plantingId: null,
    date: formatDay(day),
    lookedAt: visits.plants,
    ...what,
  });
  const standing = visitDays(twin).filter((day) => day < fellDay && day - plan.startDay < trace.length);
  const slip = () => (random.uniform() < slipShare ? (random.uniform() < 0.5 ? -1 : 1) : 0);
  const leaves = standing.map((day) => {
    const green = trace.leavesGreen[day - plan.startDay];
    const count = () => Math.max(0, Math.round(green * (1 + leafSpread * random.normal())) + slip());
    return noted(day, { leavesGreen: ofPlants(count) });
  });
  const widths = standing.map((day) => {
    const at = day - plan.startDay;
    const neckMm = Math.min(16, neckPerLeafMm * trace.leavesMade[at]);
    const hasBulb = at >= outcome.onsetOn;
    const base = neckMm * (hasBulb ? 2 : 1.2 + 0.8 * trace.bulbing[at]);
    const wide = Math.cbrt(base ** 3 + bulbDiameterMm(trace.bulbG[at]) ** 3);
    const measured = (mm: number) =>
      ofPlants(() => mm * (1 + bulbSpread * random.normal()) + calliperMm * random.normal());
    return noted(day, { neckMm: measured(neckMm), bulbMm: measured(wide) });
  });
  const tops = visitDays(twin).map((day) => {
    // a neck fall of the model is 8 tops in 10
    const share = normalCdf((day - fellDay) / topsSpreadDays + 0.84);
    return noted(day, { topsOverShare: ofPlants(() => (random.uniform() < share ? 1 : 0)) });
  });
  return { leaves, widths, tops };
}
