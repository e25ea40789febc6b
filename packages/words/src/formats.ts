import type { Formatters } from 'intl-messageformat';

/**
 * Formats of the browser, each made when first needed and kept: making one takes a phone some milliseconds, and the
 * message format would make new ones for every message.
 */
const numbers = new Map<string, Intl.NumberFormat>();
const plurals = new Map<string, Intl.PluralRules>();
const lists = new Map<string, Intl.ListFormat>();
const regions = new Map<string, Intl.DisplayNames>();

export function numberFormat(locale: string, options: Intl.NumberFormatOptions = {}): Intl.NumberFormat {
  return kept(numbers, `${locale} ${JSON.stringify(options)}`, () => new Intl.NumberFormat(locale, options));
}

export function listFormat(locale: string, type: 'conjunction' | 'disjunction'): Intl.ListFormat {
  return kept(lists, `${locale} ${type}`, () => new Intl.ListFormat(locale, { type }));
}

export function regionNames(locale: string): Intl.DisplayNames {
  return kept(regions, locale, () => new Intl.DisplayNames(locale, { type: 'region' }));
}

/** What the message format asks for. No message holds a date or a time: those arrive in words. */
export const messageFormatters: Formatters = {
  getNumberFormat: (locale, options) => numberFormat(String(locale), options as Intl.NumberFormatOptions),
  getPluralRules: (locale, options) =>
    kept(plurals, `${locale} ${options?.type}`, () => new Intl.PluralRules(locale as string, options)),
  getDateTimeFormat: (locale, options) => new Intl.DateTimeFormat(locale as string, options),
};

function kept<Format>(formats: Map<string, Format>, key: string, make: () => Format): Format {
  let format = formats.get(key);
  if (!format) {
    format = make();
    formats.set(key, format);
  }
  return format;
}
