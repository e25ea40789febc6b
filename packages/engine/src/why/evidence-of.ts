import type { WhyAsked } from './answer.ts';
import { answerAt, answerOdds } from './answer-odds.ts';
import { type Cause, causeKinds, type RunCause, type SeenCause } from './causes.ts';
import type { Evidence } from './evidence.ts';
import { passedOver, type Question, questionAnswers } from './questions.ts';
import { runEvidence } from './run-evidence.ts';
import { seenCauses } from './seen-causes.ts';
import { meanSight, type Weighed } from './weigh.ts';

export type ForAndAgainst = { for: Evidence[]; against: Evidence[] };

/** What speaks for a cause and against it. */
export function evidenceOf(cause: Cause, asked: WhyAsked, weighed: Weighed): ForAndAgainst {
  const told: ForAndAgainst = { for: [], against: [] };
  const run = weighed.runs.get(cause);
  if (run) {
    const withTenths = tenths(meanSight(run.atWork.facts, asked.symptoms));
    const withoutTenths = tenths(meanSight(run.without.facts, asked.symptoms));
    if (withTenths <= withoutTenths) told.against.push({ code: 'run-no-matter', withTenths, withoutTenths });
    else if (run.told) told.for.push({ code: 'run-with-and-without', withTenths, withoutTenths });
    else told.for.push({ code: 'run-only-if', ifTenths: withTenths, asToldTenths: withoutTenths });
    const { for: shown, against } = runEvidence(cause as RunCause, asked, run);
    told.for.push(...shown);
    told.against.push(...against);
  }
  if (causeKinds[cause] === 'seen') {
    const { shows } = seenCauses[cause as SeenCause];
    for (const symptom of asked.symptoms)
      (goesWith(shows[symptom]) ? told.for : told.against).push({
        code: goesWith(shows[symptom]) ? 'goes-with' : 'not-with',
        symptom,
      });
    const circumstance = weighed.circumstances.get(cause);
    if (circumstance) (circumstance.factor >= 0.7 ? told.for : told.against).push(...circumstance.shown);
  }
  for (const of of saidOf(cause, asked)) (of.speaksFor ? told.for : told.against).push(of.evidence);
  return told;
}

function goesWith(share: number | undefined): boolean {
  return share !== undefined && share >= 0.1;
}

/** Answers that tell of a cause, and which way. */
function saidOf(cause: Cause, { answers }: WhyAsked): { evidence: Evidence; speaksFor: boolean }[] {
  return (Object.entries(answers) as [Question, string][]).flatMap(([question, answer]) => {
    const of = answerOdds[question].with[cause];
    if (answer === passedOver || !of) return [];
    const at = answerAt(questionAnswers[question], answer);
    const evidence = { code: 'said', question, answer } as Evidence;
    return [{ evidence, speaksFor: of[at] > answerOdds[question].usual[at] }];
  });
}

function tenths(share: number): number {
  return Math.round(10 * share);
}
