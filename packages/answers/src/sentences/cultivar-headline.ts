import type { Cultivar } from '@neckfall/data';
import type { Speaker } from '@neckfall/words';

/** What an onion is, in a sentence. */
export function cultivarHeadline(cultivar: Cultivar, { say, numberRange }: Speaker): string {
  const { name, kind, type, colour, keepsMonths } = cultivar;
  return say('cultivars.one', {
    name,
    what: kind === 'bulb-onion' ? say(`cultivars.a.${type}`) : say(`cultivars.a.${kind}`),
    colour: colour ? say(`colour.${colour}`) : 'none',
    months: numberRange(...keepsMonths, 1),
  });
}
