import { type MessageFormatElement, parse, TYPE } from '@formatjs/icu-messageformat-parser';
import { formatNumber } from './numbers.ts';
import type { Locale, MessageValues } from './speaker.ts';

/** A message with plurals, choices or numbers, ready to be filled. */
export type GrammarMessage = readonly MessageFormatElement[];

/** @throws SyntaxError on a message that is not of the message format of Unicode ICU */
export function readGrammar(pattern: string): GrammarMessage {
  return parse(pattern);
}

/** @throws Error naming a value that the message needs and lacks, or what it asks for and we do not tell */
export function fillGrammar(message: GrammarMessage, values: MessageValues, locale: Locale): string {
  return filled(message, values, locale, null);
}

/** `counted`: the number of the plural one is in, which `#` stands for. */
function filled(
  message: GrammarMessage,
  values: MessageValues,
  locale: Locale,
  counted: number | null,
): string {
  return message.map((element) => text(element, values, locale, counted)).join('');
}

function text(
  element: MessageFormatElement,
  values: MessageValues,
  locale: Locale,
  counted: number | null,
): string {
  if (element.type === TYPE.literal) return element.value;
  if (element.type === TYPE.pound) return counted === null ? '#' : told(counted);
  const value = values[element.value];
  if (value === undefined) throw new Error(`expected a value for {${element.value}}, got none`);
  switch (element.type) {
    case TYPE.argument:
      return String(value);
    case TYPE.number:
      return told(Number(value), element.style);
    case TYPE.select:
      return filled((element.options[String(value)] ?? element.options.other).value, values, locale, counted);
    case TYPE.plural: {
      const count = Number(value) - element.offset;
      const { options, pluralType } = element;
      const option =
        options[`=${value}`] ?? options[rulesOf(locale, pluralType).select(count)] ?? options.other;
      return filled(option.value, values, locale, count);
    }
    default:
      throw new Error(`expected a message of words, numbers and choices, got {${element.value}} as another`);
  }
}

type NumberStyle = Extract<MessageFormatElement, { type: TYPE.number }>['style'];

/** `{rows, number}` and `{minutes, number, ::00}`. */
function told(value: number, style?: NumberStyle): string {
  const options = typeof style === 'object' && style !== null ? style.parsedOptions : {};
  return formatNumber(value, { digits: 3, wholeDigits: options.minimumIntegerDigits ?? 1 });
}

const rules = new Map<string, Intl.PluralRules>();

/** Of all formats of a browser the one that is made at once. */
function rulesOf(locale: Locale, type: Intl.PluralRulesOptions['type'] = 'cardinal'): Intl.PluralRules {
  const key = `${locale} ${type}`;
  let found = rules.get(key);
  if (!found) {
    found = new Intl.PluralRules(locale, { type });
    rules.set(key, found);
  }
  return found;
}
