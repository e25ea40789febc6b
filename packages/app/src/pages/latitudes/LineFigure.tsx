import { type LatitudeClimates, lastLatitude } from '@neckfall/engine';
import { LatitudeLine, latitudeLineOf, latitudeTableOf } from '@neckfall/pictures';
import { useMemo } from 'preact/hooks';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { Working } from '../../controls/Working.tsx';
import { voice } from '../../state/settings.ts';
import { madeUpWay } from './made-up.ts';
import { useLine } from './use-line.ts';

type Props = {
  climates: LatitudeClimates;
  side: 1 | -1;
  /** The warmth at which the slider rests. */
  warmerC: number;
  from: number;
  /** Degrees from the equator, while they move. */
  here: number;
};

/** The way from the equator toward the pole: what does best at each degree, and where one stands. */
export function LineFigure({ climates, side, warmerC, from, here }: Props) {
  const speaker = voice.value;
  const { known, isWhole } = useLine(climates, side, warmerC, from);
  // it says nothing of where one stands
  const table = useMemo(
    () => (
      <Twin
        {...latitudeTableOf({ known, side, speaker })}
        note={
          isWhole
            ? null
            : speaker.say('app.latitudes.line.working', { known: known.length, all: lastLatitude + 1 })
        }
      />
    ),
    [known, isWhole, side, speaker],
  );
  if (known.length === 0) return <Working />;
  const line = latitudeLineOf({ known, here, side, speaker });
  return (
    <div data-waiting={isWhole ? undefined : true}>
      <FitWidth>{(width) => <LatitudeLine id="latitude-line" width={width} {...line} />}</FitWidth>
      {table}
      {isWhole && (
        <TakePicture
          name="best"
          what={() => speaker.say('app.latitudes.line')}
          draw={(width) => <LatitudeLine id="kept-line" width={width} {...line} />}
          summary={line.summary}
          table={() => latitudeTableOf({ known, side, speaker })}
          of={madeUpWay(side, warmerC)}
        />
      )}
    </div>
  );
}
