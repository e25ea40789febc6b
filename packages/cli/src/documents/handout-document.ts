import { type Handout, type HandoutFacts, type HandoutLine, namedOf } from '@neckfall/answers';
import { formatDay } from '@neckfall/engine';
import type { Paper } from '@neckfall/pictures';
import type { Frame } from '../frame/frame.ts';
import { documentHead } from './document-head.ts';
import type { HandoutDocument } from './handout-schema.ts';
import { dateRangeOf, onsetRangeOf, rangeOf, round, seasonSharesOf } from './values.ts';

/** All that a sheet may say, with the numbers of its crop; a page that is full leaves some of it out. */
export function handoutDocument(
  frame: Frame,
  facts: HandoutFacts,
  { handout, paper }: { handout: Handout; paper: Paper },
): HandoutDocument {
  const { heading, dateline, verdict, note, buy, when, signs, cautions } = handout;
  const words = (lines: readonly HandoutLine[]) => lines.map(({ text }) => text);
  return {
    schema: 'neckfall/handout@1',
    ...documentHead(frame),
    today: formatDay(facts.today),
    paper,
    crop: cropOf(facts),
    heading,
    dateline,
    verdict,
    because: words(handout.because),
    note,
    buy,
    when,
    signs,
    theYear: handout.year,
    work: handout.work.map(({ days, text }) => ({ days, what: text })),
    cautions,
    sure: words(handout.sure),
    grounds: words(handout.sources),
  };
}

function cropOf(facts: HandoutFacts): HandoutDocument['crop'] {
  const { class: dayLengthClass, summary } = namedOf(facts);
  const { plan, emergence, plantOut, onset, neckFall } = summary;
  return {
    class: dayLengthClass,
    type: plan.type,
    start: plan.start,
    date: formatDay(plan.startDay),
    outcome: summary.outcome,
    gamble: summary.gamble,
    emergence: dateRangeOf(emergence),
    plantOut: plantOut && dateRangeOf(plantOut),
    onset: onsetRangeOf(onset),
    neckFall: dateRangeOf(neckFall),
    bulbDiameterMm: rangeOf(summary.bulbDiameterMm),
    emergedShare: round(summary.emergedShare),
    seasonShares: seasonSharesOf(summary.seasonShares),
  };
}
