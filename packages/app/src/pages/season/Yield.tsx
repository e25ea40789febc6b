import { feetToMetres, gardenRanges, metresToFeet, type SeasonSummary, standOf } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { spacing, usualPlants } from '../../state/plan-asked.ts';
import { asked, go } from '../../state/route.ts';
import { units, voice } from '../../state/settings.ts';
import { neededWords } from './needed-words.ts';

const [fewest, most] = gardenRanges.plants;

/** What so many plants, or so long a row, give. */
export function Yield({ summary }: { summary: SeasonSummary }) {
  const { say, number, quantity, quantityRange } = voice.value;
  const { plantCm, perStation } = spacing.value;
  const plants = asked.value.plants ?? usualPlants;
  const stand = standOf(plants, spacing.value);
  const { areaM2, rowM } = stand;
  const { p10, p50, p90 } = summary.marketableKgM2;
  const inFeet = units.value === 'us';
  const shown = (metres: number) => (inFeet ? metresToFeet(metres) : metres);
  const plantsOf = (row: number) =>
    Math.min(
      most,
      Math.max(fewest, Math.round(((inFeet ? feetToMetres(row) : row) * 100 * perStation) / plantCm)),
    );
  const want = (wanted: number | null) =>
    go({ plants: wanted === usualPlants ? null : wanted }, { replace: true });
  const needed = neededWords(summary, stand, spacing.value);
  const hasCrop = p90 > 0;
  return (
    <Fold class="yield" id="yield" title={say('app.season.yield')}>
      <form class="form" onSubmit={(event) => event.preventDefault()}>
        <NumberField
          label={say('app.season.yield.plants')}
          hint={say('app.season.yield.plants.hint')}
          value={plants}
          min={fewest}
          max={most}
          onValue={(wanted) => want(wanted === null ? null : Math.round(wanted))}
        />
        <NumberField
          label={say('app.season.yield.row', { unit: inFeet ? 'inch' : 'cm' })}
          hint={say('app.season.yield.row.hint', { distance: quantity('spacing', plantCm) })}
          value={shown(rowM)}
          digits={1}
          min={1}
          max={shown(100_000)}
          onValue={(row) => want(row === null ? null : plantsOf(row))}
        />
      </form>
      <p>
        {hasCrop
          ? say('app.season.yield.is', {
              plants: number(plants),
              row: quantity('rowLength', rowM),
              area: quantity('area', areaM2),
              middle: quantity('crop', p50 * areaM2),
              range: quantityRange('crop', p10 * areaM2, p90 * areaM2),
            })
          : say('app.season.yield.none')}
      </p>
      {needed && <p>{needed.needed}</p>}
    </Fold>
  );
}
