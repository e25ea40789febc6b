import {
  type Choice,
  type ClassAnswer,
  type ClassNow,
  type ClassSurvey,
  groupKinds,
  type SeasonSummary,
  worthWeights,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { betterThanLead, namesHereFirst, namesKnownHere } from '../facts/index.ts';
import { type Advice, type Told, toldOf } from './where-headline.ts';

/** What a headline says of a list, the best first. @param now the season of the first of them that is in time today */
export function adviceOfList(choices: readonly Choice[], now: SeasonSummary | null): Advice {
  const told = choices.map(({ summary }) => toldOf(summary));
  return { lead: told[0], better: betterThanLead(told), now: now && toldOf(now) };
}

/** The same of a place, for all that might be grown there. */
export type PlaceAdvice = { lead: ClassAnswer; better: ClassAnswer | null; now: ClassNow | null };

export function adviceOfPlace(survey: Pick<ClassSurvey, 'lead' | 'now' | 'classes'>): PlaceAdvice {
  const lead = survey.lead();
  const now = survey.now();
  // the other classes take their time, and no headline speaks of all where one that is good is named
  const better = lead.verdict === 'good' || now ? null : betterThanLead(survey.classes());
  return { lead, better, now };
}

/** Whether a headline knows of nothing good, while the first of a list does well by name: that is no more than a chance. */
export function isDoubtful({ lead, better, now }: Advice, [first]: readonly Choice[]): boolean {
  const isGood = ({ verdict, gamble }: Told) => verdict === 'good' && !gamble;
  return ![lead, better, now].some((told) => told !== null && isGood(told)) && isGood(toldOf(first.summary));
}

/** What told a choice from the best of the next kind in rank, or why it fails. */
export function choiceWhy({ why }: Choice, { reason, say }: Speaker): string {
  if (!('nextType' in why.values) || !why.values.nextType || !why.values.nextStart) return reason(why);
  const type = say(`type.${why.values.nextType}`);
  const next = say(`crop-kind.${why.values.nextStart}`, { type });
  return reason({ code: why.code, values: { ...why.values, next } });
}

/**
 * The names of a choice as one phrase, some of them where there are many; with a country, only those that are known in
 * it, where there are such.
 */
export function namesOf(
  { kind: { names } }: { kind: Pick<Choice['kind'], 'names'> },
  { all, say, number }: Speaker,
  most = names.length,
  country: string | null = null,
): string {
  const known = country === null ? [] : namesKnownHere(namesHereFirst(names, country), country);
  const shown = (known.length > 0 ? known : names).slice(0, most);
  const left = number(names.length - shown.length);
  if (shown.length === names.length) return all(names);
  const isRestElsewhere = known.length > 0 && shown.length === known.length;
  return all([
    ...shown,
    isRestElsewhere ? say('which.elsewhere', { count: left }) : say('warning.more-places', { more: left }),
  ]);
}

/** Kinds that nothing tells from one that is told; null where others are better, or none is as good. */
export function alikeSentence(choices: readonly Choice[], told: Choice, speaker: Speaker): string | null {
  if (told.rank !== 1) return null;
  const { say, all } = speaker;
  const others = groupKinds(choices.filter(({ rank }) => rank === 1)).filter(
    ({ type, start }) => type !== told.kind.type || start !== told.kind.start,
  );
  if (others.length === 0) return null;
  const kinds = others.map(({ type, start }) => say(`crop-kind.${start}`, { type: say(`type.${type}`) }));
  return say('which.alike', { kinds: all(kinds) });
}

/** The formula of the ranking in words. */
export function rankingSentence({ say, number }: Speaker): string {
  const { size, keeping, flower, careYear, small, practice } = worthWeights;
  return say('which.ranking', {
    size: number(size, 2),
    small: number(small, 2),
    keeping: number(keeping, 2),
    flower: number(flower, 2),
    careYear: number(careYear, 2),
    practice: number(practice, 2),
  });
}

/** From this share of plants on, flowers of sets are worth a word. */
const manyFlowers = 0.1;
/** Sets under this seldom do (common practice, no source). */
const smallSetMm = 16;

/** A warning where sets shown were large and stored cold, so that many run to flower; null where none were. */
export function setsWarning(choices: readonly Choice[], { say, quantity, plants }: Speaker): string | null {
  const sets = choices.find(
    ({ kind, summary }) => kind.start === 'sets' && (summary.boltedPlantsShare?.p50 ?? 0) >= manyFlowers,
  );
  if (sets?.summary.plan.start !== 'sets') return null;
  const { plan, boltedPlantsShare } = sets.summary;
  return say('warning.which-sets', {
    size: quantity('bulbLength', plan.setSizeMm),
    small: quantity('bulbLength', smallSetMm),
    store: say(`store.${plan.setStore}`),
    plants: plants(boltedPlantsShare?.p50 ?? 0),
  });
}
