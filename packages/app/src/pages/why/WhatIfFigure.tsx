import { measureOf } from '@neckfall/answers';
import type { WhatIf } from '@neckfall/engine';
import { SectionRow, SoundBulbs, whatIfSectionOf, whatIfTableOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { grownSite } from '../../state/grown-site.ts';
import { onionLook } from '../../state/onion-look.ts';
import { voice } from '../../state/settings.ts';

/** The crop with a cause at work beside the same without it: bulbs cut through, or what is left of ten in store. */
export function WhatIfFigure({ whatIf }: { whatIf: WhatIf }) {
  const { atWork, grown, change } = whatIf;
  const speaker = voice.value;
  const { say } = speaker;
  const told = {
    name: 'what-if',
    day: grown.plan.startDay,
    what: () => say('app.take.of.what-if'),
    weather: grownSite.value?.weather ? 'some' : 'drawn',
  } as const;
  if (measureOf(change, atWork, grown) === 'sound') {
    const [withIt, without] = [atWork, grown].map(({ soundShare }) => Math.round(10 * (soundShare ?? 0)));
    // bulb by bulb the same tells nothing
    if (withIt === without) return null;
    return (
      <>
        <SoundBulbs withIt={withIt} without={without} speaker={speaker} />
        <TakePicture
          {...told}
          draw={() => <SoundBulbs withIt={withIt} without={without} speaker={speaker} />}
          summary={say('app.why.picture.store', { with: withIt, without })}
          table={() => null}
        />
      </>
    );
  }
  const section = whatIfSectionOf(whatIf, onionLook.value, speaker);
  return (
    <>
      <FitWidth>{(width) => <SectionRow width={width} {...section} />}</FitWidth>
      <TakePicture
        {...told}
        draw={(width) => <SectionRow width={width} {...section} />}
        summary={section.summary}
        table={() => whatIfTableOf(section, speaker)}
      />
    </>
  );
}
