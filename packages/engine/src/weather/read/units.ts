import { inchesToMm } from '../../units/index.ts';
import type { WeatherQuantity } from './found.ts';

/** What a unit is of, and how a value in it becomes one in °C, mm, MJ m⁻² or W m⁻²: `(value + offset) × times / over`. */
type Unit = { of: 'temperature' | 'rain' | 'energy' | 'power'; offset: number; times: number; over: number };

const unit = (of: Unit['of'], times: number, over = 1, offset = 0): Unit => ({ of, offset, times, over });

/** Units as they are told, by the sign that we write for each. */
const units = {
  '°C': unit('temperature', 1),
  '°F': unit('temperature', 5, 9, -32),
  K: unit('temperature', 1, 1, -273.15),
  '0.1 °C': unit('temperature', 1, 10),
  '0.1 °F': unit('temperature', 5, 90, -320),
  mm: unit('rain', 1),
  cm: unit('rain', 10),
  in: unit('rain', inchesToMm(1)),
  '0.1 mm': unit('rain', 1, 10),
  '0.01 in': unit('rain', inchesToMm(1), 100),
  m: unit('rain', 1000),
  'MJ/m²': unit('energy', 1),
  'kJ/m²': unit('energy', 1, 1e3),
  'J/m²': unit('energy', 1, 1e6),
  'J/cm²': unit('energy', 1, 100),
  'kWh/m²': unit('energy', 3.6),
  'Wh/m²': unit('energy', 3.6, 1e3),
  // thermochemical calories a square centimetre
  Ly: unit('energy', 0.04184),
  'W/m²': unit('power', 1),
} satisfies Record<string, Unit>;
export type UnitName = keyof typeof units;

/** How units are written, without spaces, points, degree signs and powers, in small letters. */
const spellings: Record<string, UnitName> = {
  c: '°C',
  degc: '°C',
  degreec: '°C',
  degreesc: '°C',
  celsius: '°C',
  degreecelsius: '°C',
  degreescelsius: '°C',
  gradcelsius: '°C',
  gradosc: '°C',
  grausc: '°C',
  gradic: '°C',
  f: '°F',
  degf: '°F',
  degreef: '°F',
  degreesf: '°F',
  fahrenheit: '°F',
  degreesfahrenheit: '°F',
  k: 'K',
  kelvin: 'K',
  degk: 'K',
  '01c': '0.1 °C',
  '01degreescelsius': '0.1 °C',
  tenthsc: '0.1 °C',
  tenthsofc: '0.1 °C',
  tenthsofdegreesc: '0.1 °C',
  tenthsofdegreescelsius: '0.1 °C',
  '110c': '0.1 °C',
  '01f': '0.1 °F',
  mm: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  milimetros: 'mm',
  millimetri: 'mm',
  mmday: 'mm',
  mmd: 'mm',
  mmd1: 'mm',
  mmday1: 'mm',
  mmtag: 'mm',
  mmjour: 'mm',
  mmdia: 'mm',
  lm2: 'mm',
  l: 'mm',
  kgm2: 'mm',
  cm: 'cm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  zoll: 'in',
  pouces: 'in',
  pulgadas: 'in',
  inday: 'in',
  '"': 'in',
  '01mm': '0.1 mm',
  '110mm': '0.1 mm',
  tenthsmm: '0.1 mm',
  tenthsofmm: '0.1 mm',
  tenthsofmillimeters: '0.1 mm',
  '001in': '0.01 in',
  hundredthsofinches: '0.01 in',
  mjm2: 'MJ/m²',
  mjm2day: 'MJ/m²',
  mjm2d: 'MJ/m²',
  mjm2d1: 'MJ/m²',
  mjm2hr: 'MJ/m²',
  mjmm: 'MJ/m²',
  mj: 'MJ/m²',
  mjhr: 'MJ/m²',
  kjm2: 'kJ/m²',
  jm2: 'J/m²',
  jcm2: 'J/cm²',
  kwhm2: 'kWh/m²',
  kwhm2day: 'kWh/m²',
  kwhrm2: 'kWh/m²',
  kwhrm2day: 'kWh/m²',
  kwh: 'kWh/m²',
  whm2: 'Wh/m²',
  whm2day: 'Wh/m²',
  whrm2: 'Wh/m²',
  ly: 'Ly',
  langley: 'Ly',
  langleys: 'Ly',
  lyday: 'Ly',
  calcm2: 'Ly',
  wm2: 'W/m²',
  wattsm2: 'W/m²',
  wattm2: 'W/m²',
  wqm: 'W/m²',
  w: 'W/m²',
  watts: 'W/m²',
};

/** The unit that a text is; null where it is none of ours. */
export function unitOf(text: string): UnitName | null {
  if (text.length > 40) return null;
  const bare = text
    .replaceAll('℃', 'c')
    .replaceAll('℉', 'f')
    .replaceAll('²', '2')
    .toLowerCase()
    .replace(/[\s.,°º˚*^/_·−\-'`´()[\]\uFFFD]/g, '');
  return Object.hasOwn(spellings, bare) ? spellings[bare]! : null;
}

export function unitIsOf(name: UnitName): Unit['of'] {
  return units[name].of;
}

/** A value in a unit, in that of the quantity: °C, mm, MJ m⁻² or W m⁻². */
export function inBase(value: number, name: UnitName): number {
  const { offset, times, over } = units[name];
  return ((value + offset) * times) / over;
}

/** What kind of unit a quantity has; null for dates. */
export function kindOfQuantity(as: WeatherQuantity): Unit['of'] | null {
  if (as.startsWith('temp')) return 'temperature';
  if (as.startsWith('rain')) return 'rain';
  if (as === 'solarMJ') return 'energy';
  return as === 'solarW' ? 'power' : null;
}

export type ToBase = (value: number) => number;

/** How a value in the unit that a service names becomes that of its quantity; null: no unit of it. */
export function toBaseOf(as: WeatherQuantity, unit: string): ToBase | null {
  const name = unitOf(unit);
  return name !== null && unitIsOf(name) === kindOfQuantity(as) ? (value) => inBase(value, name) : null;
}
