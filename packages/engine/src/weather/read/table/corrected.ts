import type { WeatherCorrections, WeatherIssue } from '../found.ts';
import { kindOfQuantity, type UnitName, unitIsOf, unitOf } from '../units.ts';
import { issue } from './find-table.ts';
import type { HeaderName } from './header-name.ts';
import { type Meaning, meaningOf } from './meaning.ts';

/** Units in which a reader may say that a column is. */
const tenths = { temperature: '0.1 °C', rain: '0.1 mm' } as const;

/** What the reader says that columns hold, by their place; null for a column that is not to be used. */
export function askedColumns(
  names: readonly HeaderName[],
  corrections: WeatherCorrections,
): { ok: true; value: Map<number, Meaning | null> } | { ok: false; issue: WeatherIssue } {
  const asked = new Map<number, Meaning | null>();
  for (const { column, as, unit } of corrections.columns) {
    const at = names.findIndex((name) => name.column === column);
    if (at < 0) {
      return issue(
        'unknown-column',
        null,
        column,
        `one of ${names
          .map((name) => name.column)
          .join(', ')
          .slice(0, 300)}`,
        column,
      );
    }
    if (as === null) {
      asked.set(at, null);
      continue;
    }
    const kind = kindOfQuantity(as);
    const named = unit === null ? null : unitNamed(unit, kind);
    if (unit !== null && (named === null || unitIsOf(named) !== kind)) {
      return issue('unit-unknown', null, unit, expected(kind), column);
    }
    const stated = meaningOf(names[at]!)?.unit ?? names[at]!.unit;
    const own = stated !== null && unitIsOf(stated) === kind ? stated : null;
    asked.set(at, { as, rank: 1000, unit: named ?? own });
  }
  return { ok: true, value: asked };
}

function unitNamed(unit: string, kind: ReturnType<typeof kindOfQuantity>): UnitName | null {
  const isTenths = /^tenths?$/i.test(unit.trim());
  if (isTenths) return kind === 'temperature' || kind === 'rain' ? tenths[kind] : null;
  return unitOf(unit);
}

function expected(kind: ReturnType<typeof kindOfQuantity>): string {
  if (kind === 'temperature') return '°C, °F, K or tenths';
  if (kind === 'rain') return 'mm, cm, in or tenths';
  if (kind === 'energy') return 'MJ/m², kJ/m², J/cm², kWh/m² or Ly';
  return kind === 'power' ? 'W/m²' : 'no unit';
}
