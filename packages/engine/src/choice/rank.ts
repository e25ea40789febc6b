import type { Reason, SeasonSummary, Site } from '../season/index.ts';
import type { GrownKind } from './choose-kinds.ts';
import { harvestOf } from './harvest.ts';
import { type Kind, usualMonths } from './kind.ts';
import { groupKinds } from './kind-groups.ts';
import { total, type WorthParts, worthParts } from './worth.ts';

/** One kind at its best date. */
export type Choice = {
  /** 1 is best; choices that these years cannot tell apart share a rank. */
  rank: number;
  /** How many others share it. */
  alike: number;
  kind: Kind;
  summary: SeasonSummary;
  worth: number;
  parts: WorthParts;
  /** What told it from the best of the next kind in rank, as a list shows them; where it is not good itself, why. */
  why: Reason | ChoiceReason;
};

/** Codes that `why` may have besides those of a season. Each needs a message. */
export const choiceReasonCodes = [
  'choice-chance',
  'choice-flower',
  'choice-size',
  'choice-keeping',
  'choice-time',
  'choice-work',
  'choice-cold-bed',
  'choice-drying',
  'choice-practice',
  'choice-scarce',
  'choice-usual',
  'choice-last',
] as const;

type ChoiceReasonCode = (typeof choiceReasonCodes)[number];

/** What told a choice from the next kind, with the numbers of both sides; no next where none comes after. */
export type ChoiceReason = {
  code: ChoiceReasonCode;
  values: Side &
    NextSide & {
      /** Choices that share the rank. */
      alike: number;
      years: number;
    };
};

/** Half of the seasons end with tops down: below this nothing is worth calling a crop. */
const ripensShare = 0.5;

/**
 * Puts kinds in order, best first. What is printed of one onion counts half and what is usual for its type the
 * other half: of many onions the one that seems best mostly owes it to a figure that is off. Where tops don't go
 * over, ease counts for nothing.
 */
export function rankChoices(site: Site, grown: readonly GrownKind[]): Choice[] {
  const choices = grown.map(({ kind, summary, usual }): Choice => {
    const parts = partsOf(site, summary, usualMonths(kind));
    const usualParts = partsOf(site, usual, null);
    for (const part of partNames) parts[part] = (parts[part] + usualParts[part]) / 2;
    return { rank: 0, alike: 0, kind, summary, worth: total(parts), parts, why: summary.reason };
  });
  choices.sort((a, b) => Number(ripens(b)) - Number(ripens(a)) || b.worth - a.worth);
  const firstOfKinds = groupKinds(choices).map(({ choices: [first] }) => choices.indexOf(first));
  for (let first = 0; first < choices.length; ) {
    let end = first + 1;
    while (end < choices.length && cannotTell(choices[first], choices[end])) end++;
    for (let i = first; i < end; i++) {
      const choice = choices[i];
      choice.rank = first + 1;
      choice.alike = end - first - 1;
      const next = firstOfKinds.find((at) => at >= end);
      choice.why = reasonOf(choice, next === undefined ? null : choices[next]);
    }
    first = end;
  }
  return choices;
}

function partsOf(site: Site, summary: SeasonSummary, keepsMonths: number | null): WorthParts {
  return worthParts(site, summary.plan, harvestOf(site, summary), keepsMonths);
}

function ripens({ summary }: Choice): boolean {
  return summary.neckFall.share >= ripensShare;
}

function cannotTell(a: Choice, b: Choice): boolean {
  return ripens(a) === ripens(b) && a.worth - b.worth <= Math.hypot(samplingError(a), samplingError(b));
}

/**
 * Standard error of the share of good seasons in so many years tried. Half a season is added to both sides
 * (Jeffreys' prior, Brown, Cai & DasGupta 2001), so that "every year" of thirty is not taken for certainty.
 */
function samplingError({ summary: { years, seasonShares } }: Choice): number {
  const share = (seasonShares.good * years + 0.5) / (years + 1);
  return Math.sqrt((share * (1 - share)) / years);
}

function reasonOf(choice: Choice, next: Choice | null): Reason | ChoiceReason {
  const { summary, alike } = choice;
  if (summary.outcome !== 'good') return summary.reason;
  const values = { ...sideOf(choice), alike, years: summary.years };
  if (!next) return { code: 'choice-last', values };
  const lead = (part: WorthPart) => choice.parts[part] - next.parts[part];
  const own = sideOf(choice);
  const other = sideOf(next);
  // the numbers are its own, so they must say the same
  const [decided] = partNames
    .filter((part) => lead(part) > 0 && isSeen(part, own, other))
    .sort((a, b) => lead(b) - lead(a));
  return {
    code: decided ? codeOf[decided] : 'choice-usual',
    values: {
      ...values,
      nextGoodYearShare: other.goodYearShare,
      nextBoltedPlantShare: other.boltedPlantShare,
      nextDiameterMm: other.diameterMm,
      nextMonths: other.months,
      nextWeeks: other.weeks,
      nextType: next.kind.type,
      nextStart: next.kind.start,
    },
  };
}

type WorthPart = keyof WorthParts;

const codeOf: Readonly<Record<WorthPart, ChoiceReasonCode>> = {
  chance: 'choice-chance',
  flower: 'choice-flower',
  size: 'choice-size',
  keeping: 'choice-keeping',
  time: 'choice-time',
  work: 'choice-work',
  coldBed: 'choice-cold-bed',
  drying: 'choice-drying',
  practice: 'choice-practice',
  scarce: 'choice-scarce',
};
const partNames = Object.keys(codeOf) as WorthPart[];

type Side = Record<'goodYearShare' | 'boltedPlantShare' | 'diameterMm' | 'months' | 'weeks', number>;

/** The same of the next kind, and what it is. */
type NextSide = { [Name in keyof Side as `next${Capitalize<Name>}`]?: number } & {
  nextType?: Kind['type'];
  nextStart?: Kind['start'];
};

/** The numbers that may decide, as they are said. */
function sideOf({ summary, kind }: Choice): Side {
  const { neckFall, plan } = summary;
  return {
    goodYearShare: summary.seasonShares.good,
    boltedPlantShare: summary.boltedPlantsShare?.p50 ?? 0,
    diameterMm: Math.round(summary.bulbDiameterMm?.p50 ?? 0),
    months: Math.round(usualMonths(kind)),
    weeks: Math.round(((neckFall.days?.p50 ?? plan.startDay + 365) - plan.startDay) / 7),
  };
}

/** Less than this does not show in tenths of an inch, mm. */
const seenMm = 3;

/** Whether a reader sees in the numbers that one side leads in a part. */
function isSeen(part: WorthPart, own: Side, next: Side): boolean {
  const tenths = (share: number) => Math.round(10 * share);
  switch (part) {
    case 'chance':
      return tenths(own.goodYearShare) > tenths(next.goodYearShare);
    case 'flower':
      return tenths(own.boltedPlantShare) < tenths(next.boltedPlantShare);
    case 'size':
      return own.diameterMm >= next.diameterMm + seenMm;
    case 'keeping':
      return own.months > next.months;
    case 'time':
      return own.weeks < next.weeks;
    default:
      return true;
  }
}
