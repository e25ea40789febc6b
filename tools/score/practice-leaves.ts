import {
  dayNumber,
  fullSizeDryG,
  limits,
  type PlantValues,
  planDefaults,
  plantValuesOf,
  runnerOf,
  type SeasonSummary,
  type Site,
  summarise,
} from '../../packages/engine/src/index.ts';
import {
  type PracticeTest,
  practiceDay,
  practiceTest,
  practiceYear,
  sayStart,
  siteOfPractice,
  typeMeant,
} from './practice-check.ts';
import { type LeafyCrop, leafyCrops } from './practice-places.ts';

/** Leaves made at which the trade calls a plant grown, and what it then makes. */
const leaves = { least: 12, about: 13, most: 14 } as const;
/** What `fullSizeDryG` is across. */
const fullMm = 64;
const densityPerM2 = 25;
/** Of the crops tried so many must come to the leaves, or nothing has been tested. */
const leastCrops = 4;

export function fullAtThirteenLeaves(values: PlantValues): PracticeTest[] {
  const misses: string[] = [];
  const found: string[] = [];
  let reached = 0;
  for (const crop of leafyCrops) {
    const site = siteOfPractice(crop.place, values);
    const starts = startsOf(site, crop);
    const about = starts
      .filter((start) => made(start) >= leaves.least && made(start) <= leaves.most)
      .sort((a, b) => Math.abs(made(a) - leaves.about) - Math.abs(made(b) - leaves.about));
    if (about.length === 0) {
      const range = starts.length > 0 ? `${most(starts, -1)} to ${most(starts, 1)} leaves` : 'no crop';
      found.push(`${crop.place[0]} ${range}`);
      continue;
    }
    reached++;
    const mm = about[0].bulbDiameterMm?.p50 ?? 0;
    const dryG = (about[0].bulbMassG?.p50 ?? 0) * plantValuesOf(site.values, about[0].plan).dryMatterShare;
    found.push(`${crop.place[0]} ${mm.toFixed(0)} mm`);
    if (mm < fullMm || dryG < fullSizeDryG)
      misses.push(`${crop.place[0]}: ${dryG.toFixed(1)} g dry; ${sayStart(about[0])}`);
  }
  if (reached < leastCrops)
    misses.push(
      `only ${reached} of ${leafyCrops.length} crops come to ${leaves.least}–${leaves.most} leaves`,
    );
  return [
    practiceTest(
      `bulbs begun at ${leaves.least}–${leaves.most} leaves and ${densityPerM2}/m² are at least ${fullMm} mm and ${fullSizeDryG} g dry`,
      found.join(', '),
      misses,
    ),
  ];
}

/** Its week starts that end in a crop, whatever its size. */
function startsOf(
  site: Site,
  { class: dayLengthClass, start, months: [from, to] }: LeafyCrop,
): SeasonSummary[] {
  const summaries: SeasonSummary[] = [];
  const lastDay = dayNumber(practiceYear, to + 1, 1) - 1;
  for (let startDay = practiceDay(from, 1); startDay <= lastDay; startDay += 7) {
    const type = typeMeant(site, dayLengthClass, start, startDay);
    const plan = { ...planDefaults, type, start, startDay, densityPerM2 };
    const summary = summarise(site, plan, runnerOf(site, plan));
    if (isCrop(summary)) summaries.push(summary);
  }
  return summaries;
}

/** Most plants stand, few flower, tops go over in most years. */
function isCrop({ neckFall, boltedPlantsShare, winterKilledPlantsShare }: SeasonSummary): boolean {
  return (
    neckFall.share >= 0.5 &&
    (boltedPlantsShare?.p50 ?? 1) <= limits.bolted &&
    (winterKilledPlantsShare?.p50 ?? 1) <= limits.killed
  );
}

function made({ leavesMadeAtOnset }: SeasonSummary): number {
  return leavesMadeAtOnset?.p50 ?? 0;
}

function most(starts: readonly SeasonSummary[], way: 1 | -1): string {
  return (way * Math.max(...starts.map((start) => way * made(start)))).toFixed(1);
}
