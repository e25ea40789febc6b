import { shiftSentence } from '@neckfall/answers';
import { formatDay, type LearntParameter, type LearntSeason } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { SeasonDocument } from './season-schema.ts';
import { rangeOf, round } from './values.ts';

/** What `season` says of a planting besides what it says of any crop. */
export type LearntDocument = Pick<
  SeasonDocument,
  'asOf' | 'observations' | 'effectiveDraws' | 'learnt' | 'standing'
>;

const names = {
  criticalH: 'day-length-needed-h',
  ripening: 'ripening-factor',
  phyllochron: 'leaf-pace-factor',
  growth: 'growth-factor',
} as const satisfies Record<LearntParameter, string>;

/** @param needPhotoperiodH of the kind here */
export function learntDocument(
  { asOf, observations, effectiveDraws, learnt, standing }: LearntSeason,
  needPhotoperiodH: number,
  speaker: Speaker,
): LearntDocument {
  return {
    asOf: formatDay(asOf),
    observations,
    effectiveDraws: Math.round(effectiveDraws),
    learnt: learnt.map((shift) => {
      const { parameter, usual, now, sd, neckFallDays } = shift;
      const base = parameter === 'criticalH' ? needPhotoperiodH : 0;
      return {
        parameter: names[parameter],
        usual: round(base + usual),
        now: round(base + now),
        sd: round(sd),
        neckFallDays: neckFallDays === null ? null : round(neckFallDays, 1),
        sentence: shiftSentence(shift, speaker) ?? speaker.say(`as-usual.${parameter}`),
      };
    }),
    standing: standing && {
      date: formatDay(standing.day),
      leavesExpected: rangeOf(standing.leavesExpected),
      leavesSeen: round(standing.leavesSeen, 1),
      daysBehind: standing.daysBehind,
    },
  };
}
