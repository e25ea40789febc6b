import type { Cause } from '../../packages/engine/src/index.ts';
import { type Band, bandsOf, type Found, foundOf, isFirst, shareOf } from './figures.ts';
import type { PublishedFailure } from './published.ts';
import { missReasons } from './stated-causes.ts';
import type { Asked } from './study.ts';

const percent = (share: number) => (Number.isFinite(share) ? `${Math.round(100 * share)} %` : '–');
const list = (causes: readonly Cause[]) => causes.join(' or ');

/** docs/why.md */
export function whyPage(
  asked: readonly Asked[],
  calendars: readonly PublishedFailure[],
  trials: readonly PublishedFailure[],
): string {
  const found = foundOf(asked);
  const runs = asked.filter((of) => found.some(({ cause, isRun }) => isRun && cause === of.cause));
  const published = [...calendars, ...trials];
  return `# How well Why finds a cause

Written by \`npx tsx tools/why/main.ts\`; don't edit it here.

## Published failures

Failures of published calendars and trials, with what was seen and how the crop was grown as far as the source says; nothing
else was told and no question answered. The stated cause came first in **${published.filter(right).length} of ${published.length}** (calendars
${calendars.filter(right).length} of ${calendars.length}, trials ${trials.filter(right).length} of ${trials.length}). Weights and priors were set with these rows in sight, so this is
a fit and no test.

| failure | seen | stated | found | |
| --- | --- | --- | --- | --- |
${published.map(publishedRow).join('\n')}

## Causes put into sound crops

At eight places from 1° S to 54° N a crop that grows well there was spoilt by one cause, lived through a season of other
weather and other plants than those that are asked, and told as a grower would: up to three of the things seen, most of them. A
cause counts as at work where it spoils most seasons of a crop that is good in most without it, and brings what is told. Kinds
count as wrong where no start suits them. Up to three questions were answered as growers with that cause would, one in seven
passed over.

What is seen of a season, and what growers answer, is drawn from the same tables that the answer counts with (for causes that no
run knows, changed by a factor of 0.6 to 1.2); the model is its own judge. So this tests the reckoning, not the tables.

Causes that runs tell: first at once ${percent(shareOf(runs, atOnce))}, first after the questions **${percent(shareOf(runs, after))}**, among
the first three **${percent(shareOf(runs, ofThree))}**, of ${runs.length} cases of ${found.filter(({ isRun }) => isRun).length} causes. All causes, each as often: ${percent(shareOf(asked, atOnce))}, ${percent(shareOf(asked, after))}
and ${percent(shareOf(asked, ofThree))} of ${asked.length}; ${(asked.reduce((sum, { questions }) => sum + questions, 0) / asked.length).toFixed(1)} questions a case.

| cause | cases | places | first at once | first after questions | among three | first instead |
| --- | --- | --- | --- | --- | --- | --- |
${found
  .toSorted((a, b) => Number(b.isRun) - Number(a.isRun) || b.first - a.first)
  .map(foundRow)
  .join('\n')}

Hunger, weeds, wind and ozone show nothing of their own: small bulbs have likelier causes, and Why says what to look at.

## Whether probabilities mean what they say

Causes by the probability given, after the questions, and the share of them that had been put in.

| given | causes | right |
| --- | --- | --- |
${bandsOf(asked).map(bandRow).join('\n')}
`;
}

const right = ({ answer, stated }: PublishedFailure) => isFirst(answer, stated);
const atOnce = ({ first, cause }: Asked) => isFirst(first, [cause]);
const after = ({ last, cause }: Asked) => isFirst(last, [cause]);
const ofThree = ({ last, cause }: Asked) => last.causes.slice(0, 3).some((of) => of.cause === cause);

function publishedRow(failure: PublishedFailure): string {
  const { id, seen, stated, answer } = failure;
  const causes = answer.causes
    .slice(0, 3)
    .map(({ cause, probability }) => `${cause} ${percent(probability)}`)
    .join(', ');
  const miss = right(failure) ? '' : (missReasons.get(id) ?? 'missed');
  return `| ${[id, seen, list(stated), causes, miss].join(' | ')} |`;
}

function foundRow({ cause, isRun, cases, places, firstAtOnce, first, firstThree, instead }: Found): string {
  const others = instead.map(([of, count]) => `${of} ${count}`).join(', ');
  const name = isRun ? `**${cause}**` : cause;
  return `| ${[name, cases, places, ...[firstAtOnce, first, firstThree].map(percent), others].join(' | ')} |`;
}

function bandRow({ from, to, given, right: of }: Band): string {
  return `| ${percent(from)} to ${percent(to)} | ${given} | ${percent(of)} |`;
}
