import { feetToMetres, gardenRanges, metresToFeet, type SeasonSummary, startWays } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { spacing } from '../../state/plan-asked.ts';
import { asked, go } from '../../state/route.ts';
import { units, voice } from '../../state/settings.ts';

const usualPlants = 100;
const [fewest, most] = gardenRanges.plants;

/** What so many plants, or so long a row, give. */
export function Yield({ summary }: { summary: SeasonSummary }) {
  const { say, number, quantity, quantityRange } = voice.value;
  const { plan, marketableKgM2, emergedShare } = summary;
  const { plantCm } = spacing.value;
  const plants = asked.value.plants ?? usualPlants;
  const areaM2 = plants / plan.densityPerM2;
  const rowM = (plants * plantCm) / 100;
  const { p10, p50, p90 } = marketableKgM2;
  const inFeet = units.value === 'us';
  const shown = (metres: number) => (inFeet ? metresToFeet(metres) : metres);
  const plantsOf = (row: number) =>
    Math.min(most, Math.max(fewest, Math.round(((inFeet ? feetToMetres(row) : row) * 100) / plantCm)));
  const want = (wanted: number | null) =>
    go({ plants: wanted === usualPlants ? null : wanted }, { replace: true });
  const isSown = startWays[plan.start].from === 'seed';
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
      {isSown && emergedShare > 0 && (
        <p>{say('app.season.yield.seed', { seeds: number(Math.ceil(plants / emergedShare)) })}</p>
      )}
    </Fold>
  );
}
