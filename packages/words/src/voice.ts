import { type DateWords, dateWords } from './dates.ts';
import { displayNames, listFormat } from './formats.ts';
import type { MessageValues } from './message.ts';
import type { Language, Locale, MessageKey } from './messages.ts';
import { formatOf, formatRange } from './numbers.ts';
import { type QuantityWords, quantityWords, type Units } from './quantities.ts';
import { shown } from './shown.ts';
import { type Say, sayer } from './speaker.ts';

/** The suffix of a name tells the unit. */
type Values = Readonly<Record<string, number | string>>;

/** Everything a page needs to speak one language in one system of units. */
export type Speaker = DateWords &
  QuantityWords & {
    locale: Locale;
    units: Units;
    say: Say;
    /** An engine's reason: its code is `reason.<code>`, its values are put into words by their unit suffix, `years` being how many were tried. */
    reason(reason: { code: string; values: Values }): string;
    /** A fact on a way of starting: its message is `start-fact.<code>`. */
    fact(fact: { code: string; values: Values }): string;
    /** Why a job on a crop falls when it does: its message is `job.<code>`. */
    job(why: { code: string; values: Values }): string;
    number(value: number, digits?: number): string;
    /** With all its digits, as numbers under each other have them: 4.0 */
    figure(value: number, digits: number): string;
    numberRange(from: number, to: number, digits?: number): string;
    /** "a, b and c" */
    all(items: readonly string[]): string;
    /** "a, b or c" */
    any(items: readonly string[]): string;
    /** 15 h 24 min */
    dayLength(hours: number): string;
    /** "7 years in 10", "all 30 years tried". @param tried how many were; null where the share is no count of years */
    years(share: number, tried: number | null): string;
    /** "7 plants in 10" */
    plants(share: number): string;
    /** ISO 3166 code to name. */
    country(code: string): string;
  };

/** A language as those who speak it call it. */
export function languageName(language: Language): string {
  return displayNames(language, 'language').of(language) ?? language;
}

/** American words with American units, British words with metric ones (decision 2): the one place that says so. */
const english: Record<Units, Locale> = { metric: 'en-GB', us: 'en-US' };

/** @param language one that was loaded ({@link loadLanguage}); English always is */
export function speaker(units: Units, language: Language = 'en'): Speaker {
  const locale = language === 'en' ? english[units] : language;
  const say = sayer(locale);
  const dates = dateWords(locale, say);
  const quantities = quantityWords(units, locale, say);
  const number = (value: number, digits = 0) => formatOf(locale, digits).format(value);
  const tenths = (share: number) => Math.round(share * 10);

  function years(share: number, tried: number | null): string {
    if (tried === null || (share > 0 && share < 1)) return say('share.years', { tenths: tenths(share) });
    return say(share === 0 ? 'share.no-year' : 'share.every-year', { tried });
  }

  function plants(share: number): string {
    if (share === 0) return say('share.no-plant');
    return share === 1 ? say('share.every-plant') : say('share.plants', { tenths: tenths(share) });
  }

  function dayLength(hours: number): string {
    const minutes = Math.round(hours * 60);
    return say('unit.day-length', { hours: Math.floor(minutes / 60), minutes: minutes % 60 });
  }

  /** The suffix of a value's name tells its unit; codes of the trade become its words. */
  function inWords(name: string, value: number | string): string | number {
    if (typeof value === 'string') {
      if (name === 'start' || name === 'class' || name === 'type' || name === 'verdict') {
        return say(`${name}.${value}` as MessageKey);
      }
      return value;
    }
    if (name.endsWith('DayOfYear')) return dates.dayOfYear(value);
    if (name.endsWith('Day')) return dates.day(value);
    if (name.endsWith('TempC') || name === 'tempC') return quantities.quantity('temperature', value);
    if (name.startsWith('degreeDays')) return quantities.quantity('warmth', value);
    if (name.startsWith('gramsPer')) return quantities.quantity('feed', value);
    if (name.startsWith('gramsFor')) return quantities.quantity('bulbMass', value);
    if (name.startsWith('litresPer')) return quantities.quantity('watering', value);
    if (name.startsWith('litresFor')) return quantities.quantity('water', value);
    if (name.endsWith('Mm')) return quantities.quantity('bulbLength', value);
    if (name.endsWith('H')) return dayLength(value);
    return value;
  }

  function filled(key: MessageKey, values: Values): string {
    const words: MessageValues = {};
    const tried = typeof values.years === 'number' ? values.years : null;
    for (const [name, value] of Object.entries(values)) {
      if (name.endsWith('YearShare') || name === 'share') words[name] = years(Number(value), tried);
      else if (name.endsWith('PlantShare')) words[name] = plants(Number(value));
      else words[name] = inWords(name, value);
    }
    return say(key, words);
  }

  return {
    locale,
    units,
    say,
    ...dates,
    ...quantities,
    reason: ({ code, values }) => filled(`reason.${code}` as MessageKey, values),
    fact: ({ code, values }) => filled(`start-fact.${code}` as MessageKey, values),
    job: ({ code, values }) => filled(`job.${code}` as MessageKey, values),
    number,
    figure: (value, digits) => formatOf(locale, digits, { minimumFractionDigits: digits }).format(value),
    numberRange: (from, to, digits = 0) => formatRange(formatOf(locale, digits), from, to),
    all: (items) => listFormat(locale, 'conjunction').format(items.map((item) => shown(item))),
    any: (items) => listFormat(locale, 'disjunction').format(items.map((item) => shown(item))),
    dayLength,
    years,
    plants,
    country: (code) => (/^[A-Z]{2}$/.test(code) ? displayNames(locale, 'region').of(code)! : code),
  };
}
