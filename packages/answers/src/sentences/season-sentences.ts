import type { SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { seasonEnds } from '../facts/index.ts';

/** What a crop comes to, in one sentence. @param cultivar its name; null where none is known */
export function seasonHeadline(
  summary: SeasonSummary,
  cultivar: string | null,
  place: string,
  speaker: Speaker,
): string {
  const { say, day, years, quantity } = speaker;
  const { plan, outcome, gamble, seasonShares, neckFall, bulbDiameterMm } = summary;
  const values = {
    place,
    crop: say(`crop.${plan.start}`, { type: cultivar ?? say(`type.${plan.type}`), date: day(plan.startDay) }),
    years: years(seasonShares[outcome], summary.years),
    neckFall: neckFall.days ? day(neckFall.days.p50) : '',
    diameter: bulbDiameterMm ? quantity('bulbLength', bulbDiameterMm.p50) : '',
  };
  if (gamble && outcome !== 'good') {
    return say('season.gamble', {
      ...values,
      years: years(seasonShares.good, summary.years),
      failure: say(`season.failure.${outcome}`),
    });
  }
  return say(`season.${outcome}`, values);
}

export function sharesSentence(summary: SeasonSummary, { say, all, years }: Speaker): string {
  const parts = seasonEnds(summary).map(([verdict, share]) =>
    say(`season.share.${verdict}`, { years: years(share, summary.years) }),
  );
  return say('season.shares', { shares: all(parts) });
}

/** Why fewer leaves stand when bulbs start than were made till then; null where all of them stand. */
export function leavesGoneSentence(
  { leavesMadeAtOnset, leavesGreenAtOnset }: SeasonSummary,
  { say }: Speaker,
): string | null {
  const made = Math.round(leavesMadeAtOnset?.p50 ?? 0);
  const gone = made - Math.round(leavesGreenAtOnset?.p50 ?? 0);
  return gone > 0 ? say('season.leaves-gone', { made, gone }) : null;
}

/** Masses of plants are log-normal: two in three lie within a factor e^σ of the middle one, σ² = ln(1 + CV²). */
export function plantSpreadSentence(
  { bulbMassG, plantSpreadCv }: SeasonSummary,
  speaker: Speaker,
): string | null {
  if (bulbMassG === null) return null;
  const factor = Math.exp(Math.sqrt(Math.log(1 + plantSpreadCv ** 2)));
  return speaker.say('season.spread', {
    middle: speaker.quantity('bulbMass', bulbMassG.p50),
    range: speaker.quantityRange('bulbMass', bulbMassG.p50 / factor, bulbMassG.p50 * factor),
  });
}
