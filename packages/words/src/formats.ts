import type { Formatters } from 'intl-messageformat';
import { formatNumber } from './numbers.ts';

const plurals = new Map<string, Intl.PluralRules>();

/** What the message format asks for. The browser is asked for plurals alone: its other formats take a phone long to make. */
export const messageFormatters: Formatters = {
  getNumberFormat: (_, options) => numberFormat(options as Intl.NumberFormatOptions | undefined),
  getPluralRules(locale, options) {
    const key = `${locale} ${options?.type}`;
    let rules = plurals.get(key);
    if (!rules) {
      rules = new Intl.PluralRules(locale as string, options);
      plurals.set(key, rules);
    }
    return rules;
  },
  getDateTimeFormat: () => {
    throw new Error('expected a message without dates: dates arrive in words');
  },
};

/** `{rows, number}` and `{minutes, number, ::00}`. */
function numberFormat(options: Intl.NumberFormatOptions = {}): Intl.NumberFormat {
  const { minimumIntegerDigits: wholeDigits = 1, ...unknown } = options;
  const [name] = Object.entries(unknown).find(([, value]) => value !== undefined) ?? [];
  if (name !== undefined) throw new Error(`expected a plain number in a message, got one with ${name}`);
  const format = (value: number) => formatNumber(value, { digits: 3, wholeDigits });
  return { format } as Intl.NumberFormat;
}
