import { dayLengthClasses } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type AtlasPoint, atlasBands } from '../facts/index.ts';
import { bandName } from './atlas-lead.ts';

/** A band of latitude in words, for the table of a map. */
export type AtlasRow = {
  band: string;
  kind: string;
  good: string;
  start: string;
  tops: string;
  size: string;
  points: string;
};

/** What a map's points come to, by bands of latitude from north to south. */
export function atlasRows(points: readonly AtlasPoint[], speaker: Speaker): AtlasRow[] {
  const { say, years, quantity, number } = speaker;
  const month = (value: number | null) =>
    value === null ? say('none') : say('atlas.month', { month: String(value) });
  return atlasBands(points).map((band) => {
    const lead = dayLengthClasses.reduce((a, b) => (band.classShares[b] > band.classShares[a] ? b : a));
    const isBare = band.bareShare >= 1;
    return {
      band: bandName(band, speaker),
      kind: isBare
        ? say('none')
        : say('atlas.row.kind', {
            kind: say(`class.${lead}`),
            tenths: Math.round(band.classShares[lead] * 10),
          }),
      good: years(band.goodShare, null),
      start: month(band.startMonth),
      tops: month(band.topsMonth),
      size: band.bulbDiameterMm === null ? say('none') : quantity('bulbLength', band.bulbDiameterMm),
      points: number(band.points),
    };
  });
}
