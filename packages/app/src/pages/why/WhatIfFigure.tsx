import { measureOf } from '@neckfall/answers';
import type { WhatIf } from '@neckfall/engine';
import { SectionRow, SoundBulbs, whatIfSectionOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { onionLook } from '../../state/onion-look.ts';
import { voice } from '../../state/settings.ts';

/** The crop with a cause at work beside the same without it: bulbs cut through, or what is left of ten in store. */
export function WhatIfFigure({ whatIf }: { whatIf: WhatIf }) {
  const { atWork, grown, change } = whatIf;
  if (measureOf(change, atWork, grown) === 'sound') {
    const [withIt, without] = [atWork, grown].map(({ soundShare }) => Math.round(10 * (soundShare ?? 0)));
    // bulb by bulb the same tells nothing
    if (withIt === without) return null;
    return <SoundBulbs withIt={withIt} without={without} speaker={voice.value} />;
  }
  const section = whatIfSectionOf(whatIf, onionLook.value, voice.value);
  return <FitWidth>{(width) => <SectionRow width={width} {...section} />}</FitWidth>;
}
