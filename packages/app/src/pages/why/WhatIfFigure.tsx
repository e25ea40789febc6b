import type { ChangeCode, WhatIf } from '@neckfall/engine';
import { FitWidth, SectionRow, whatIfSectionOf } from '../../pictures/index.ts';
import { SoundBulbs } from '../../pictures/sound-bulbs.tsx';
import { onionLook } from '../../state/onion-look.ts';
import { voice } from '../../state/settings.ts';

/** What is done otherwise after the bulb has grown. */
const ofTheStore: readonly ChangeCode[] = [
  'cool-dry-store',
  'frost-free-store',
  'better-keeper',
  'lifted-ripe',
];

/** The crop with a cause at work beside the same without it: bulbs cut through, or what is left of ten in store. */
export function WhatIfFigure({ whatIf }: { whatIf: WhatIf }) {
  const { atWork, grown, change } = whatIf;
  if (ofTheStore.includes(change.code)) {
    if (atWork.soundShare === null || grown.soundShare === null) return null;
    return <SoundBulbs withIt={atWork.soundShare} without={grown.soundShare} speaker={voice.value} />;
  }
  const section = whatIfSectionOf(whatIf, onionLook.value, voice.value);
  return <FitWidth>{(width) => <SectionRow width={width} {...section} />}</FitWidth>;
}
