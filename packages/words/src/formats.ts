import { memoize } from '@formatjs/fast-memoize';

/** The platform's formats, each made when first asked for and kept: making one takes as long as many uses of it. */
export const numberFormat = memoize(
  (locale: string, options?: Intl.NumberFormatOptions) => new Intl.NumberFormat(locale, options),
);
export const dateFormat = memoize(
  (locale: string, options?: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(locale, options),
);
export const listFormat = memoize(
  (locale: string, type: 'conjunction' | 'disjunction') => new Intl.ListFormat(locale, { type }),
);
export const pluralRules = memoize(
  (locale: string, options?: Intl.PluralRulesOptions) => new Intl.PluralRules(locale, options),
);
export const displayNames = memoize(
  (locale: string, type: 'region' | 'language') => new Intl.DisplayNames(locale, { type, fallback: 'code' }),
);
