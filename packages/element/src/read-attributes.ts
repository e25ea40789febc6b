import {
  type DayLengthClass,
  dayLengthClasses,
  dayNumber,
  parseDay,
  type StartMethod,
  startMethods,
} from '@neckfall/engine';
import { type Language, languages, spokenOf, type Units } from '@neckfall/words';
import type { Problem } from './problem.ts';

export const attributeNames = [
  'latitude',
  'longitude',
  'name',
  'class',
  'start',
  'date',
  'today',
  'lang',
  'units',
  'data',
] as const;
type AttributeName = (typeof attributeNames)[number];

/** What the attributes say; null where they say nothing. */
export type Asked = {
  latitudeDeg: number | null;
  longitudeDeg: number | null;
  name: string | null;
  class: DayLengthClass | null;
  start: StartMethod | null;
  startDay: number | null;
  /** The reader's day where none is named. */
  today: number;
  language: Language;
  units: Units;
  data: string | null;
  problems: Problem[];
};

const unitSystems: readonly Units[] = ['metric', 'us'];

/** @param pageLang language of the page, which the element speaks where it is not told otherwise */
export function readAttributes(
  attribute: (name: AttributeName) => string | null,
  pageLang: string,
  now = new Date(),
): Asked {
  const problems: Problem[] = [];
  const read = <Value>(
    name: AttributeName,
    parse: (text: string) => Value | null,
    expected: Problem['expected'],
  ) => {
    const text = attribute(name)?.trim() ?? '';
    if (text === '') return null;
    const value = parse(text);
    if (value === null) problems.push({ attribute: name, value: text, expected });
    return value;
  };
  const degrees = (limit: number) => (text: string) => {
    const value = /^-?\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
    return Math.abs(value) <= limit ? value : null;
  };
  const oneOf =
    <Choice extends string>(choices: readonly Choice[]) =>
    (text: string) =>
      choices.find((choice) => choice === text) ?? null;
  const choice = <Choice extends string>(name: AttributeName, choices: readonly Choice[]) =>
    read(name, oneOf(choices), { choices });
  const language = choice('lang', languages);
  return {
    latitudeDeg: read('latitude', degrees(90), { degrees: 90 }),
    longitudeDeg: read('longitude', degrees(180), { degrees: 180 }),
    name: attribute('name')?.trim() || null,
    class: choice('class', dayLengthClasses),
    start: choice('start', startMethods),
    startDay: read('date', parseDay, 'day'),
    today: read('today', parseDay, 'day') ?? dayNumber(now.getFullYear(), now.getMonth() + 1, now.getDate()),
    language: language ?? spokenOf([pageLang]),
    units: choice('units', unitSystems) ?? 'metric',
    data: attribute('data')?.trim() || null,
    problems,
  };
}
