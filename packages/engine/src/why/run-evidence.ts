import { climateDayOf, climateYearDays, type DayNumber } from '../calendar/index.ts';
import { mean } from '../math/index.ts';
import { hoursFromHome, plantValuesOf } from '../plant/index.ts';
import {
  calendarYear,
  driverIndex,
  neededSunUpH,
  type Plan,
  planDefaults,
  type Site,
} from '../season/index.ts';
import type { WhyAsked } from './answer.ts';
import type { RunCause } from './causes.ts';
import type { Evidence } from './evidence.ts';
import type { ForAndAgainst } from './evidence-of.ts';
import type { Tried } from './season-facts.ts';
import type { RunFound } from './weigh.ts';
import type { GrownSo } from './what-if.ts';

/** The numbers of the two runs that tell of a cause. */
export function runEvidence(cause: RunCause, { said }: WhyAsked, run: RunFound): ForAndAgainst {
  const atWork = run.atWork.grown;
  const without = run.without.grown;
  // with the cause in it: another kind, where nobody said which
  const { site, plan } = run.atWork.trial;
  switch (cause) {
    case 'days-too-short':
      return { for: [longestDay(site, plan)], against: [] };
    case 'type-too-late':
      return {
        for: [...neededDay(site, plan), ...began(run.atWork), ...gains(atWork, without)],
        against: home(site, plan),
      };
    case 'type-too-early':
      return {
        for: [...neededDay(site, plan), ...began(run.atWork), ...gains(atWork, without)],
        against: home(site, plan),
      };
    case 'started-too-late':
      return {
        for: [...began(run.atWork), ...earlier(run, atWork, without), ...ripens(atWork, without)],
        against: [],
      };
    case 'cold-on-large-plants':
      return { for: [...coldMet(run.atWork), ...flowering(atWork, without)], against: [] };
    case 'large-sets':
      return sets(plan, said, run);
    case 'cold-stored-sets':
      return { for: flowering(atWork, without), against: [] };
    case 'winter-cold':
      return { for: winter(run.atWork), against: [] };
    case 'cold-soil':
      return { for: emergence(run.atWork), against: [] };
    case 'thirst':
      return {
        for: [...thirsty(run.atWork), ...gains(atWork, without)],
        against: saidPlan('water', run, said),
      };
    case 'crowding':
      return {
        for: [
          { code: 'plants-per-m2', perM2: atWork.plan.densityPerM2, usualPerM2: planDefaults.densityPerM2 },
          ...gains(atWork, without),
        ],
        against: saidPlan('densityPerM2', run, said),
      };
    case 'shade':
      return {
        for: [
          ...(atWork.plan.sunHours === null
            ? []
            : [{ code: 'sun-hours', hours: atWork.plan.sunHours } as const]),
          ...gains(atWork, without),
        ],
        against: saidPlan('sunHours', run, said),
      };
    case 'heat':
    case 'cool-season':
      return {
        for: [meanWarmth(site, atWork), ...gains(atWork, without), ...ripens(atWork, without)],
        against: [],
      };
    case 'wrong-seed':
      return { for: gains(atWork, without), against: [] };
    case 'warm-store':
    case 'damp-store':
      return { for: [storeAir(run.atWork), ...lost(run)], against: [] };
    case 'frozen-store':
      return { for: [...coldestStore(run.atWork), ...lost(run)], against: [] };
    case 'short-keeper':
      return { for: [...keeps(run.atWork), ...lost(run)], against: [] };
    case 'lifted-unripe':
      return { for: lost(run), against: [] };
  }
}

function longestDay(site: Site, plan: Plan): Evidence {
  return { code: 'longest-day', longestH: site.longestDayH, neededH: needOf(site, plan) };
}

function needOf(site: Site, plan: Plan): number {
  return neededSunUpH(site, plantValuesOf(site.values, plan).criticalPhotoperiodH);
}

/** The day from the start on which days first are as long as the plant needs. */
function neededDay(site: Site, plan: Plan): Evidence[] {
  const { firstDay, photoperiodH } = site.dayTable(calendarYear(plan.startDay));
  const need = plantValuesOf(site.values, plan).criticalPhotoperiodH;
  for (let day = plan.startDay; day < plan.startDay + climateYearDays; day++)
    if (photoperiodH[day - firstDay] > need)
      return [{ code: 'needed-day-comes', day, neededH: needOf(site, plan) }];
  return [longestDay(site, plan)];
}

function began({ facts, grown: { onset, leavesAtOnset } }: Tried): Evidence[] {
  if (onset !== null && leavesAtOnset !== null)
    return [{ code: 'bulbs-began', day: onset, leaves: leavesAtOnset }];
  return [{ code: 'never-began', leaves: sum(facts, (of) => of.leavesAtOnset) }];
}

const mmOf = ({ bulbDiameterMm }: GrownSo) => bulbDiameterMm?.p50 ?? null;

function gains(atWork: GrownSo, without: GrownSo): Evidence[] {
  const mm = mmOf(without);
  const asToldMm = mmOf(atWork);
  if (mm === null) return [];
  if (asToldMm === null) return [{ code: 'bulbs-without', mm }];
  return Math.abs(mm - asToldMm) < 2 ? [] : [{ code: 'size-without', mm, asToldMm }];
}

function ripens(atWork: GrownSo, without: GrownSo): Evidence[] {
  if (without.neckFall === null) return [];
  return atWork.neckFall === null ? [{ code: 'ripens-without', day: without.neckFall }] : [];
}

function earlier({ change }: RunFound, atWork: GrownSo, without: GrownSo): Evidence[] {
  const mm = mmOf(without);
  if (change.code !== 'earlier' || mm === null || without.leavesAtOnset === null)
    return gains(atWork, without);
  return [
    { code: 'leaves-if-earlier', weeks: Math.round(change.days / 7), leaves: without.leavesAtOnset, mm },
  ];
}

const tenths = (share: number) => Math.round(10 * share);

function flowering(atWork: GrownSo, without: GrownSo): Evidence[] {
  return [
    {
      code: 'flowering-without',
      plantsTenths: tenths(without.boltedShare),
      asToldTenths: tenths(atWork.boltedShare),
    },
  ];
}

/** Days under this turn grown plants to flower, °C (seen: Lincoln University Extension 2010). */
const coldUnderC = 10;

function coldMet({ trial: { site, plan }, grown }: Tried): Evidence[] {
  const end = grown.onset ?? grown.neckFall ?? plan.startDay + climateYearDays / 2;
  const tempC = warmthBetween(site, plan, plan.startDay, end);
  const cold = tempC.filter((of) => of < coldUnderC).length;
  return [{ code: 'cold-met', weeks: Math.round(cold / 7), plantsTenths: tenths(grown.boltedShare) }];
}

function sets(plan: Plan, said: WhyAsked['said'], run: RunFound): ForAndAgainst {
  const { atWork, without, told } = run;
  if (plan.start !== 'sets') return { for: [], against: [] };
  const plantsTenths = tenths(atWork.grown.boltedShare);
  if (!told)
    return { for: [{ code: 'sets-not-said', plantsTenths }], against: saidPlan('setSizeMm', run, said) };
  const small = without.grown.plan;
  const smallMm = small.start === 'sets' ? small.setSizeMm : 0;
  const smallTenths = tenths(without.grown.boltedShare);
  return { for: [{ code: 'set-size', mm: plan.setSizeMm, plantsTenths, smallMm, smallTenths }], against: [] };
}

function winter({ facts, trial: { site, plan } }: Tried): Evidence[] {
  const killed = sum(facts, ({ killedShare, liftedShare }) => killedShare - liftedShare);
  const lifted = sum(facts, ({ liftedShare }) => liftedShare);
  const told: Evidence[] = [];
  if (killed >= 0.05)
    told.push({ code: 'winter-losses', plantsTenths: tenths(killed), coldestC: coldest(site, plan) });
  if (lifted >= 0.05) told.push({ code: 'frost-lifted', plantsTenths: tenths(lifted) });
  return told;
}

/** Coldest night of a middling year. */
function coldest(site: Site, plan: Plan): number {
  const { tempMinC } = site.generated('none', calendarYear(plan.startDay));
  const lows = Array.from({ length: site.years }, (_, season) => {
    const at = driverIndex(site, plan.startDay, season);
    return tempMinC.subarray(at, at + climateYearDays).reduce((a, b) => Math.min(a, b), 99);
  }).sort((a, b) => a - b);
  return lows[lows.length >> 1];
}

function emergence({ facts, trial: { site, plan } }: Tried): Evidence[] {
  const at = climateDayOf(plan.startDay);
  const tempC = mean(site.mean('none').soilMeanC.subarray(at, at + 14));
  const tenthsUp = tenths(sum(facts, ({ emergedShare }) => emergedShare));
  return [{ code: 'soil-at-start', tempC, upTenths: tenthsUp }];
}

function thirsty({ facts }: Tried): Evidence[] {
  const days = sum(facts, ({ thirstyDays }) => thirstyDays);
  return days < 1 ? [] : [{ code: 'thirsty-days', days: Math.round(days) }];
}

function meanWarmth(site: Site, { onset, neckFall, plan }: GrownSo): Evidence {
  const from = onset ?? plan.startDay;
  const to = Math.max(from + 30, neckFall ?? plan.startDay + 150);
  return { code: 'mean-warmth', tempC: mean(warmthBetween(site, plan, from, to)) };
}

/** Mean of each day, °C: as measured where days were, else that of the climate. */
function warmthBetween(site: Site, plan: Plan, from: DayNumber, to: DayNumber): Float64Array {
  if (site.record === null) {
    const at = climateDayOf(from);
    return site.mean(plan.cover).tempMeanC.subarray(at, at + to - from);
  }
  const { tempMeanC } = site.generated(plan.cover, calendarYear(plan.startDay));
  const at = driverIndex(site, plan.startDay, 0) + from - plan.startDay;
  return tempMeanC.subarray(at, at + to - from);
}

function home(site: Site, plan: Plan): Evidence[] {
  const away = hoursFromHome(plan.type, site.longestDayH, false);
  return away > 0 ? [] : [{ code: 'at-home', type: plan.type }];
}

const planFieldNames = {
  water: 'water',
  densityPerM2: 'density',
  sunHours: 'sun',
  setSizeMm: 'set-size',
} as const;

/** The plan speaks against what can only have been there unsaid. */
function saidPlan(
  field: keyof typeof planFieldNames,
  { told, atWork }: RunFound,
  said: WhyAsked['said'],
): Evidence[] {
  const { plan } = atWork.grown;
  return !told && said.has(field)
    ? [{ code: 'plan-says', field: planFieldNames[field], start: plan.start }]
    : [];
}

/** Days in store that tell of its air. */
const storedDays = 120;

function inStore({ trial: { store }, grown }: Tried, values: 'tempC' | 'humidityPct'): Float64Array {
  if (!store) return new Float64Array(1);
  const from = climateDayOf(grown.neckFall ?? grown.plan.startDay + 150);
  return Float64Array.from(
    { length: storedDays },
    (_, day) => store.air[values][(from + day) % climateYearDays],
  );
}

function storeAir(tried: Tried): Evidence {
  return {
    code: 'store-air',
    tempC: mean(inStore(tried, 'tempC')),
    humidityPct: mean(inStore(tried, 'humidityPct')),
  };
}

function coldestStore(tried: Tried): Evidence[] {
  return [{ code: 'store-coldest', tempC: inStore(tried, 'tempC').reduce((a, b) => Math.min(a, b), 99) }];
}

function keeps({ trial: { store }, grown }: Tried): Evidence[] {
  if (!store) return [];
  const [fromMonths, toMonths] = store.keepsMonths;
  const lifted = grown.neckFall ?? grown.plan.startDay + 150;
  const keptMonths = store.noticed === null ? 4 : Math.max(0, (store.noticed - lifted) / 30.4);
  return [{ code: 'keeps-usually', fromMonths, toMonths, keptMonths }];
}

function lost({ atWork, without }: RunFound): Evidence[] {
  const gone = atWork.grown.soundShare;
  const kept = without.grown.soundShare;
  if (gone === null || kept === null) return [];
  return [{ code: 'bulbs-lost', lossTenths: tenths(1 - gone), withoutTenths: tenths(1 - kept) }];
}

function sum(facts: Tried['facts'], of: (fact: Tried['facts'][number]) => number): number {
  return facts.reduce((total, fact) => total + fact.weight * of(fact), 0);
}
