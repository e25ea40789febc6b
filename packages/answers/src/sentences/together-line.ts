import type { DayNumber, DayRow, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { isUsual } from '../facts/index.ts';

/** One of the places, or of the starts, that are set beside each other. */
export type SetBeside = {
  /** Short, as it is called in a sentence. */
  name: string;
  /** Degrees, south negative. */
  latitudeDeg: number;
  summary: SeasonSummary;
  /** Its middling season, day by day. */
  rows: readonly DayRow[];
  /** Mean coldest night of a year, °C. */
  coldestC: number;
  /** Hours of sun-up the onion needs, and of the longest and the shortest day. */
  needSunUpH: number;
  longestH: number;
  shortestH: number;
};

/** A crop in one sentence: what was started when, and what comes of it. */
export function lineSentence({ summary }: Pick<SetBeside, 'summary'>, speaker: Speaker): string {
  const { say, day, years, quantity } = speaker;
  const { plan, onset, neckFall, bulbDiameterMm, outcome, seasonShares } = summary;
  const hasBulbs = isUsual(onset);
  const isOver = hasBulbs && isUsual(neckFall) && bulbDiameterMm !== null;
  return say(isOver ? 'together.line' : hasBulbs ? 'together.line.unripe' : 'together.line.no-bulbs', {
    crop: say(`crop-kind.${plan.start}`, { type: say(`type-head.${plan.type}`) }),
    date: day(plan.startDay),
    onset: hasBulbs ? day(onset.days!.p50) : '',
    tops: isOver ? day(neckFall.days!.p50) : '',
    size: isOver ? quantity('bulbLength', bulbDiameterMm.p50) : '',
    verdict: say(`verdict.${outcome}`),
    years: years(seasonShares[outcome], summary.years),
  });
}

/** What a start is called among others: "sets planted 25 March". */
export function startName(
  { start, startDay }: { start: SeasonSummary['plan']['start']; startDay: DayNumber },
  { say, day }: Speaker,
): string {
  return say(`together.start.${start}`, { date: day(startDay) });
}
