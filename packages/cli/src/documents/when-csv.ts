import type { CsvValue } from '../output/csv.ts';
import type { WhenDocument } from './when-schema.ts';

/** One row a week start; ranges become three columns. */
export function whenRows({ starts }: WhenDocument): Record<string, CsvValue>[] {
  return starts.map(
    ({ seasonShares, onset, neckFall, bulbDiameterMm, leavesMadeAtOnset, boltedPlantsShare, ...start }) => ({
      ...start,
      ...columns('seasonShare', seasonShares),
      ...columns('onset', onset),
      ...columns('neckFall', neckFall),
      ...columns('bulbDiameterMm', bulbDiameterMm),
      ...columns('leavesMadeAtOnset', leavesMadeAtOnset),
      ...columns('boltedPlantsShare', boltedPlantsShare),
    }),
  );
}

function columns(name: string, values: Record<string, CsvValue>): Record<string, CsvValue> {
  return Object.fromEntries(
    Object.entries(values).map(([key, value]) => [name + key[0].toUpperCase() + key.slice(1), value]),
  );
}
