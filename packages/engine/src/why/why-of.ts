import type { Site } from '../season/index.ts';
import type { CauseFound, WhyAnswer, WhyAsked } from './answer.ts';
import { questionToAsk } from './ask.ts';
import type { Cause } from './causes.ts';
import { type Chances, chancesOf } from './chances.ts';
import { evidenceOf } from './evidence-of.ts';
import { heeded } from './heeded.ts';
import { nextYear } from './next-year.ts';
import { cautionsOf, rescueFrom } from './rescue.ts';
import type { Trial } from './season-facts.ts';
import { mostSymptoms, symptomTimes } from './symptoms.ts';
import { meanSight, type Weighed, weigh } from './weigh.ts';
import type { GrownSo, WhatIf } from './what-if.ts';

/** Causes under this are told together with what can't be known. */
const leastTold = 0.02;
/** What ifs are shown of causes that are at least so likely. */
const leastWhatIf = 0.05;

/**
 * Why a crop came to what was seen, by its season run again: what can be saved, the causes with their probabilities and
 * what speaks for and against them, the same season without each, what to ask next and what to do next year.
 *
 * @param asked at least one symptom; throws a RangeError without
 */
export function whyOf(site: Site, asked: WhyAsked): WhyAnswer {
  if (asked.symptoms.length === 0) throw new RangeError('symptoms: expected one at least');
  const symptoms = [...new Set(asked.symptoms)].slice(0, mostSymptoms);
  const told = heeded({ ...asked, symptoms });
  const weighed = weigh(
    { trial: trialOf(site, told), said: told.said },
    symptoms,
    told.isStoreSaid,
    told.isAbout,
  );
  const chances = chancesOf(weighed.credits, told.answers);
  const ranked = [...chances]
    .flatMap(([cause, probability]) => (cause === null ? [] : [{ cause, probability }]))
    .sort((a, b) => b.probability - a.probability);
  const shown = ranked.filter(
    ({ probability }, at) => probability >= leastTold || (at === 0 && probability > 0),
  );
  const causes = shown.map(({ cause, probability }): CauseFound => {
    return {
      cause,
      probability,
      ...evidenceOf(cause, told, weighed),
      whatIf: whatIfOf(cause, probability, weighed),
    };
  });
  return {
    rescue: rescueFrom(symptoms),
    causes,
    unseen: Math.max(0, 1 - shown.reduce((sum, { probability }) => sum + probability, 0)),
    usual: meanSight(weighed.asTold.facts, symptoms),
    ask: questionToAsk(chances, told),
    asGrown: weighed.asTold.grown,
    nextYear: nextYear(leadOf(shown, chances), weighed, told.today),
    cautions: cautionsOf(symptoms),
    years: site.weatherYears,
  };
}

/** The likeliest cause; null where something unseen is likelier than it. */
function leadOf([first]: readonly { cause: Cause; probability: number }[], chances: Chances): Cause | null {
  return first && first.probability >= (chances.get(null) ?? 0) ? first.cause : null;
}

/** The season as told, with its store where something was seen there. */
function trialOf(site: Site, { plan, symptoms, store, keepsMonths, noticed }: WhyAsked): Trial {
  const inStore = symptoms.some((symptom) => symptomTimes[symptom] === 'store');
  const asked = { air: store, keepsMonths, noticed, thickNecks: [0, 1] } as const;
  return { site, plan, store: inStore ? asked : null };
}

function whatIfOf(cause: Cause, probability: number, { runs }: Weighed): WhatIf | null {
  const found = runs.get(cause);
  if (!found || probability < leastWhatIf) return null;
  const atWork = found.atWork.grown;
  const grown = found.without.grown;
  return differ(atWork, grown) ? { change: found.change, atWork, grown } : null;
}

/** Seasons differ that a grower could tell apart: shares by this, and sizes by so much of the smaller. */
const tellingShare = 0.1;
const tellingSize = 0.06;

function differ(a: GrownSo, b: GrownSo): boolean {
  if (a.outcome !== b.outcome) return true;
  const apart = (one: number | null, other: number | null) => Math.abs((one ?? 0) - (other ?? 0));
  const mm = [a.bulbDiameterMm?.p50 ?? 0, b.bulbDiameterMm?.p50 ?? 0] as const;
  return (
    apart(a.goodShare, b.goodShare) >= tellingShare ||
    apart(a.boltedShare, b.boltedShare) >= tellingShare ||
    apart(a.soundShare, b.soundShare) >= tellingShare ||
    apart(...mm) >= tellingSize * Math.min(...mm)
  );
}
