import { measureOf } from '@neckfall/answers';
import type { WhatIf } from '@neckfall/engine';
import { FitWidth, SectionRow, whatIfSectionOf } from '../../pictures/index.ts';
import { SoundBulbs } from '../../pictures/sound-bulbs.tsx';
import { onionLook } from '../../state/onion-look.ts';
import { voice } from '../../state/settings.ts';

/** The crop with a cause at work beside the same without it: bulbs cut through, or what is left of ten in store. */
export function WhatIfFigure({ whatIf }: { whatIf: WhatIf }) {
  const { atWork, grown, change } = whatIf;
  if (measureOf(change, atWork, grown) === 'sound')
    return (
      <SoundBulbs withIt={atWork.soundShare ?? 0} without={grown.soundShare ?? 0} speaker={voice.value} />
    );
  const section = whatIfSectionOf(whatIf, onionLook.value, voice.value);
  return <FitWidth>{(width) => <SectionRow width={width} {...section} />}</FitWidth>;
}
