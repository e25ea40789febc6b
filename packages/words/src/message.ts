import { parse } from '@formatjs/icu-messageformat-parser';
import { formatToParts } from 'intl-messageformat';
import { dateFormat, numberFormat, pluralRules } from './formats.ts';

const formatters = {
  getNumberFormat: numberFormat,
  getDateTimeFormat: dateFormat,
  getPluralRules: pluralRules,
};
/** Named styles, of which no message asks for one. */
const styles = { number: {}, date: {}, time: {} };

export type MessageValues = Record<string, string | number>;

/**
 * A message in the message format of Unicode ICU, read once and filled as often as wanted. In parts, as the library's
 * whole formatter asks the browser for its languages each time one is made.
 * @throws SyntaxError on a message that is none, and, when filled, Error naming a value that it needs and lacks
 */
export function readMessage(pattern: string, locale: string): (values?: MessageValues) => string {
  const elements = parse(pattern);
  return (values = {}) =>
    formatToParts(elements, locale, formatters, styles, values, undefined, pattern)
      .map(({ value }) => value)
      .join('');
}
