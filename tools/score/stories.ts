import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  bulbDiameterMm,
  climateDayOf,
  type DateSpread,
  type DayLengthClass,
  dayNumber,
  defaultPlantValues,
  type Plan,
  type PlantValues,
  planDefaults,
  runnerOf,
  runPlan,
  type SeasonSummary,
  type Site,
  type StartMethod,
  typeForClass,
  type Verdict,
} from '../../packages/engine/src/index.ts';
import { answered } from './answered.ts';
import { scoreSite } from './sites.ts';

/** A place, a plan and what an expert would expect of it (memory, with tolerance). Dates `MM-DD`. */
export type Story = {
  id: string;
  lat: number;
  lon: number;
  elevationM: number;
  dayLengthClass: DayLengthClass;
  start: StartMethod;
  date: string;
  plantOut: string | null;
  expected: {
    outcome: Verdict[];
    onset: [string, string] | null;
    neckFall: [string, string] | null;
    leavesAtOnset: [number, number] | null;
    bulbDiameterMm: [number, number] | null;
  };
};

const storyYear = 2027;

export function readStories(): Story[] {
  const path = fileURLToPath(new URL('./fixtures/stories.json', import.meta.url));
  return JSON.parse(readFileSync(path, 'utf8')) as Story[];
}

function day(date: string): number {
  return dayNumber(storyYear, Number(date.slice(0, 2)), Number(date.slice(3)));
}

/** A story's plan at its place. */
function storyPlan(site: Site, story: Story): Plan {
  const startDay = day(story.date);
  const plantOut = story.plantOut === null ? null : day(story.plantOut);
  return {
    ...planDefaults,
    type: typeForClass(site, story.dayLengthClass, story.start, startDay),
    start: story.start,
    startDay,
    plantOutDay: plantOut !== null && plantOut < startDay ? plantOut + 365 : plantOut,
  };
}

function storySite(story: Story, values: PlantValues): Site {
  return scoreSite({ latitudeDeg: story.lat, longitudeDeg: story.lon, elevationM: story.elevationM }, values);
}

export function tellStory(story: Story, values: PlantValues = defaultPlantValues): SeasonSummary {
  const site = storySite(story, values);
  return runPlan(site, storyPlan(site, story));
}

/** What of a story the model does not tell, in words; empty where it tells it all. */
export function missesOfStory(story: Story, summary: SeasonSummary): string[] {
  const { expected } = story;
  const misses: string[] = [];
  if (!expected.outcome.includes(summary.outcome))
    misses.push(`outcome ${summary.outcome}, not ${expected.outcome.join(' or ')}`);
  const within = (name: string, found: number | undefined, range: [number, number] | null) => {
    if (range && (found === undefined || found < range[0] || found > range[1]))
      misses.push(`${name} ${found === undefined ? 'none' : found.toFixed(1)}, not ${range[0]}–${range[1]}`);
  };
  const climateDay = ({ days }: DateSpread) => (days ? climateDayOf(days.p50) : undefined);
  const dates = (range: [string, string] | null): [number, number] | null =>
    range && [climateDayOf(day(range[0])), climateDayOf(day(range[1]))];
  within('onset, climate day', climateDay(summary.onset), dates(expected.onset));
  within('neck fall, climate day', climateDay(summary.neckFall), dates(expected.neckFall));
  within('leaves at onset', summary.leavesMadeAtOnset?.p50, expected.leavesAtOnset);
  within('bulb, mm', summary.bulbDiameterMm?.p50, expected.bulbDiameterMm);
  return misses;
}

/** How far a season lies outside a story's dates, leaves and size, in days or about as much; 0 where it is told. */
export function storyMargins(story: Story, values: PlantValues): number {
  const site = storySite(story, values);
  const plan = storyPlan(site, story);
  const { onsetOn, fellOn, leavesMade, bulbG } = answered(site, runnerOf(site, plan));
  const { expected } = story;
  const dayOf = (on: number | null) => (on === null ? null : climateDayOf(plan.startDay + Math.round(on)));
  const outside = (found: number | null, range: [number, number] | null, unit: number) =>
    range === null
      ? 0
      : found === null
        ? 30
        : Math.min(30, Math.max(0, range[0] - found, found - range[1]) / unit);
  const dates = (range: [string, string] | null): [number, number] | null =>
    range && [climateDayOf(day(range[0])), climateDayOf(day(range[1]))];
  return (
    outside(dayOf(onsetOn), dates(expected.onset), 1) +
    outside(dayOf(fellOn), dates(expected.neckFall), 1) +
    outside(onsetOn === null ? null : leavesMade, expected.leavesAtOnset, 0.2) +
    outside(
      fellOn === null ? null : bulbDiameterMm(bulbG),
      fellOn === null ? null : expected.bulbDiameterMm,
      1,
    )
  );
}
