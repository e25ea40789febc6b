import { kindOfQuantity, type UnitName, unitIsOf } from '../units.ts';
import type { ReadColumn, Spacing } from './choose-columns.ts';
import { guessRain, guessSun, guessTemperature, type Hints, looksLikeInches } from './guess-units.ts';
import type { HeaderName } from './header-name.ts';
import type { TableProfile } from './profile.ts';

/** The unit of each column: stated, asked for, or guessed from the values. */
export function unitsOf(
  columns: readonly ReadColumn[],
  names: readonly HeaderName[],
  isAmerican: boolean,
  isMonthFirst: boolean,
  profile: TableProfile,
): (column: ReadColumn) => UnitName {
  const ofKind = (kind: string) => columns.filter(({ meaning }) => kindOfQuantity(meaning.as) === kind);
  /** As the column beside it, or another of the file. */
  const stated = (kind: string) => {
    const units = [...ofKind(kind).map(({ meaning }) => meaning.unit), ...names.map(({ unit }) => unit)];
    return units.find((unit) => unit !== null && unitIsOf(unit) === kind) ?? null;
  };
  const unstated = (kind: string) => ofKind(kind).filter(({ meaning }) => meaning.unit === null);
  const hints: Hints = {
    isAmerican,
    isMonthFirst,
    hasInches: looksLikeInches(unstated('rain')),
    temperature: stated('temperature'),
    rain: stated('rain'),
  };
  const known = profile.units?.(
    columns.map(({ name, values, hasDecimals }) => ({ words: name.words, values, hasDecimals })),
  );
  const temperature = known?.temperature ?? guessTemperature(unstated('temperature'), hints);
  const hasTemperature = ofKind('temperature').length > 0;
  const rain = known?.rain ?? guessRain(unstated('rain'), hasTemperature ? temperature : null, hints);
  return ({ meaning }) => {
    if (meaning.unit !== null) return meaning.unit;
    const kind = kindOfQuantity(meaning.as);
    if (kind === 'temperature') return temperature;
    if (kind === 'rain') return rain;
    return kind === 'energy' ? 'MJ/m²' : 'W/m²';
  };
}

/** Sun that states no unit is power or energy by how much there is of it. */
export function settleSun(columns: readonly ReadColumn[], spacing: Spacing): void {
  for (const column of columns) {
    const { meaning, values } = column;
    if (meaning.unit !== null || (meaning.as !== 'solarW' && meaning.as !== 'solarMJ')) continue;
    const unit = guessSun(values, spacing === 'days');
    const isAsPower = unitIsOf(unit) === 'power';
    // what a reader says it is stays so
    if (!column.isAsked) column.meaning = { ...meaning, as: isAsPower ? 'solarW' : 'solarMJ', unit };
    else if (isAsPower === (meaning.as === 'solarW')) column.meaning = { ...meaning, unit };
  }
}
