import type { WeatherFormatReader } from '../../found.ts';
import { type UnitName, unitIsOf, unitOf } from '../../units.ts';
import type { HeaderName } from '../header-name.ts';
import type { Meaning } from '../meaning.ts';
import { readTable } from '../read-table.ts';
import { headOf } from './header-line.ts';

const quantities: Record<string, Pick<Meaning, 'as' | 'rank'>> = {
  T2M_MAX: { as: 'tempMaxC', rank: 9 },
  T2M_MIN: { as: 'tempMinC', rank: 9 },
  T2M: { as: 'tempC', rank: 9 },
  PRECTOTCORR: { as: 'rainMm', rank: 9 },
  PRECTOT: { as: 'rainMm', rank: 8 },
  ALLSKY_SFC_SW_DWN: { as: 'solarMJ', rank: 9 },
};

/** Units of the parameters, in brackets at the ends of the lines above the table. */
function statedUnits(head: string): Map<string, UnitName> {
  const stated = new Map<string, UnitName>();
  for (const [, parameter, text] of head.matchAll(/^\s*([A-Z\d_]+)\s.*\(([^()]*)\)\s*$/gm)) {
    const unit = unitOf(text!.replace(/\/(?:day|d|hr|hour|h)$/i, ''));
    if (unit !== null) stated.set(parameter!, unit);
  }
  return stated;
}

function meaningIn(head: string): (name: HeaderName) => Meaning | null {
  const stated = statedUnits(head);
  return ({ column }) => {
    const quantity = Object.hasOwn(quantities, column) ? quantities[column]! : null;
    if (quantity === null) return null;
    const unit = stated.get(column) ?? null;
    if (quantity.as === 'rainMm') return { ...quantity, unit: unit ?? 'mm' };
    if (quantity.as !== 'solarMJ') return { ...quantity, unit: unit ?? '°C' };
    return unit !== null && unitIsOf(unit) === 'power'
      ? { ...quantity, as: 'solarW', unit }
      : { ...quantity, unit };
  };
}

/** NASA POWER, days or hours, with its lines above the table or without them. */
export const nasaPowerTable: WeatherFormatReader = {
  format: 'nasa-power-table',
  knows: (text) =>
    /^\s*-BEGIN HEADER-/.test(headOf(text)) || /^\s*YEAR,(?:MO,DY|DOY)\b.*(?:T2M|PRECTOT)/.test(headOf(text)),
  read: (file, corrections, place) => {
    const head = headOf(file.text);
    return readTable(file, corrections, place, {
      format: 'nasa-power-table',
      timeBase: /\bin UTC\b|Time[ -]?standard.*UTC/i.test(head) ? 'utc' : 'local-standard',
      meaning: meaningIn(head),
    });
  },
};
