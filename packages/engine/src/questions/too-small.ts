import { typeForClass } from '../choice/index.ts';
import { classOfType } from '../plant/index.ts';
import { type Plan, runPlan, type SeasonSummary, type Site, startedOn } from '../season/index.ts';
import { type SmallCause, type SmallTrial, smallCauses, type TooSmallAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';

/** As gardens have it that go wrong (common practice, no source). */
export const smallHabits = { lateDays: 42, crowdedPerM2: 100, shadedSunHours: 5 } as const;

/** Why bulbs stay small here: the onion of the place as advised, and with one thing at a time done as many do it. */
export function tooSmall(site: Site, { survey }: CommonAsked): TooSmallAnswer {
  const [own, ...others] = survey.classes();
  const { plan } = own.summary;
  const trials = smallCauses.flatMap((cause): SmallTrial[] => {
    if (cause === 'other-kind') {
      // the one whose bulbs come smallest here, of those that come at all
      const [other] = others
        .map(({ summary }) => summary)
        .filter(hasBulbs)
        .sort((a, b) => sizeOf(a) - sizeOf(b));
      return other ? [{ cause, summary: other }] : [];
    }
    const otherwise = changed(site, plan, cause);
    return otherwise ? [{ cause, summary: runPlan(site, otherwise) }] : [];
  });
  return {
    question: 'too-small',
    own: own.summary,
    trials: trials
      .filter(({ summary }) => hasBulbs(summary))
      .sort((a, b) => sizeOf(a.summary) - sizeOf(b.summary)),
  };
}

/** Null where that is how it is grown already. */
function changed(site: Site, plan: Plan, cause: Exclude<SmallCause, 'other-kind'>): Plan | null {
  switch (cause) {
    case 'late': {
      const day = plan.startDay + smallHabits.lateDays;
      // past summer a packet of the class holds another plant
      return typeForClass(site, classOfType[plan.type], plan.start, day) === plan.type
        ? startedOn(plan, day)
        : null;
    }
    case 'crowded':
      return plan.densityPerM2 >= smallHabits.crowdedPerM2
        ? null
        : { ...plan, densityPerM2: smallHabits.crowdedPerM2 };
    case 'unwatered':
      return plan.water === 'rain' ? null : { ...plan, water: 'rain' };
    case 'shaded':
      return plan.sunHours !== null && plan.sunHours <= smallHabits.shadedSunHours
        ? null
        : { ...plan, sunHours: smallHabits.shadedSunHours };
  }
}

/** Where in most years no bulb comes, none is small. */
function hasBulbs({ seasonShares, bulbDiameterMm }: SeasonSummary): boolean {
  return bulbDiameterMm !== null && seasonShares['no-bulb'] < 0.5;
}

function sizeOf({ bulbDiameterMm }: SeasonSummary): number {
  return bulbDiameterMm?.p50 ?? 0;
}
