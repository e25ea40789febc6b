import { onionTypes } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { discsMm, type MapKeyWords } from './map-key.tsx';

/** Words of the map's key. */
export function mapKeyWords({ say, quantity }: Speaker): MapKeyWords {
  return {
    kinds: onionTypes.map((type) => say(`type.${type}`)),
    rows: say('picture.atlas.rows'),
    bare: say('picture.atlas.bare'),
    unknown: say('picture.atlas.unknown'),
    hand: say('picture.atlas.hand'),
    quarters: ['1', '2', '3', '4'].map((quarter) => say('picture.atlas.quarter', { quarter })),
    discs: discsMm.map((mm) => say('picture.atlas.disc', { size: quantity('bulbLength', mm) })),
  };
}
