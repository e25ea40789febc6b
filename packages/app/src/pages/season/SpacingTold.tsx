import {
  densityOf,
  fillBed,
  gardenRanges,
  plantsPerM2,
  type SeasonSummary,
  type Spacing,
  standOf,
} from '@neckfall/engine';
import { Fault } from '../../controls/Fault.tsx';
import { bed } from '../../state/bed.ts';
import { voice } from '../../state/settings.ts';
import { neededWords } from './needed-words.ts';
import { useSpacings } from './use-spacings.ts';

type Props = {
  summary: SeasonSummary;
  spacing: Spacing;
  plants: number;
  /** As many plants as the bed holds. */
  onFill: (plants: number) => void;
};

/** What a spacing takes of ground, seed or sets, how large its bulbs come, and what a wider or a closer one would do. */
export function SpacingTold({ summary, spacing, plants, onFill }: Props) {
  const { say } = voice.value;
  const [wider, closer] = [besideIt(spacing, 1.5), besideIt(spacing, 1 / 1.5)];
  const { answer, isFresh, failed } = useSpacings(summary, [spacing, wider, closer].map(densityOf));
  if (failed !== null) return <Fault reason={failed} />;
  const stand = standOf(plants, spacing);
  const needed = neededWords(summary, stand, spacing);
  return (
    <div class="wide spacing-told" data-waiting={isFresh ? undefined : true}>
      <div role="status">
        <p>{takes(plants, spacing)}</p>
        {needed && <p>{needed.needed}</p>}
        {answer && <p>{comesTo(answer, spacing, wider, closer, stand.areaM2)}</p>}
      </div>
      <FillBed spacing={spacing} plants={plants} onFill={onFill} />
      {needed && <p class="hint">{say('app.spacing.reckoned', { how: needed.reckoned })}</p>}
    </div>
  );
}

/** A bed of known size holds so many. */
function FillBed({ spacing, plants, onFill }: Omit<Props, 'summary'>) {
  const { say, number } = voice.value;
  const { lengthM = null, widthM = null, name = '' } = bed.value ?? {};
  if (lengthM === null || widthM === null) return null;
  const full = fillBed(lengthM, widthM, spacing);
  const { rows, stationsPerRow } = full;
  const holds = Math.min(full.plants, gardenRanges.plants[1]);
  return (
    <p>
      {say('app.spacing.bed-holds', {
        bed: name,
        rows,
        each: number(stationsPerRow),
        plants: number(holds),
        together: spacing.perStation > 1 ? 'clumps' : 'singly',
      })}{' '}
      {holds !== plants && (
        <button type="button" onClick={() => onFill(holds)}>
          {say('app.spacing.fill', { plants: number(holds) })}
        </button>
      )}
    </p>
  );
}

function takes(plants: number, spacing: Spacing): string {
  const { say, number, quantity } = voice.value;
  const { stations, rowM, areaM2 } = standOf(plants, spacing);
  return say('app.spacing.takes', {
    plants,
    places: spacing.perStation > 1 ? number(stations) : 'singly',
    row: quantity('rowLength', rowM),
    area: quantity('area', areaM2),
  });
}

/** The size of bulbs and the crop of this spacing, and of others beside it. */
function comesTo(
  [here, ...others]: SeasonSummary[],
  spacing: Spacing,
  wider: Spacing,
  closer: Spacing,
  areaM2: number,
): string {
  const { say, quantity, quantityRange } = voice.value;
  const across = here.bulbDiameterMm;
  if (across === null) return say('app.spacing.no-bulbs');
  const sentences = [
    say('app.spacing.gives', {
      across: quantity('bulbLength', across.p50),
      range: quantityRange('bulbLength', across.p10, across.p90),
      crop: quantity('crop', here.marketableKgM2.p50 * areaM2),
    }),
  ];
  for (const [way, other, summary] of [
    ['wider', wider, others[0]],
    ['closer', closer, others[1]],
  ] as const) {
    if (other.plantCm === spacing.plantCm || !summary?.bulbDiameterMm) continue;
    sentences.push(
      say(`app.spacing.${way}`, {
        apart: quantity('spacing', other.plantCm),
        across: quantity('bulbLength', summary.bulbDiameterMm.p50),
        yield: quantity('yield', summary.marketableKgM2.p50),
        now: quantity('yield', here.marketableKgM2.p50),
      }),
    );
  }
  if (plantsPerM2(spacing) !== densityOf(spacing))
    sentences.push(say('app.spacing.beyond', { density: quantity('density', densityOf(spacing)) }));
  return sentences.join(' ');
}

/** The same rows with plants so many times as far apart in them, to half a centimetre. */
function besideIt(spacing: Spacing, times: number): Spacing {
  const [least, most] = gardenRanges.plantDistanceCm;
  const plantCm = Math.min(most, Math.max(least, Math.round(2 * times * spacing.plantCm) / 2));
  return { ...spacing, plantCm };
}
