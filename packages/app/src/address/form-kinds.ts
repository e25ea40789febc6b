import { formatDay, parseDay } from '@neckfall/engine';

/** How a value stands in an address. `read` gives undefined for what it cannot take. */
export type Form<Value> = {
  key: string;
  /** Message that says what was expected. */
  expects: 'number' | 'word' | 'day' | 'point' | 'text';
  read: (text: string) => Value | undefined;
  write: (value: Value) => string;
};

export const longestName = 120;
/** Of ids in files by others; our own have ten letters. */
const longestId = 1000;

export const number = (key: string, min: number, max: number, digits = 0): Form<number> => ({
  key,
  expects: 'number',
  read: (text) => {
    const value = readNumber(text);
    return value !== null && value >= min && value <= max ? value : undefined;
  },
  write: (value) => String(Number(value.toFixed(digits))),
});

export const word = <Word extends string>(key: string, words: readonly Word[]): Form<Word> => ({
  key,
  expects: 'word',
  read: (text) => words.find((candidate) => candidate === text.toLowerCase()),
  write: (value) => value,
});

export const yes = (key: string): Form<true> => ({
  key,
  expects: 'word',
  read: (text) => (text === 'yes' ? true : undefined),
  write: () => 'yes',
});

export const day = (key: string): Form<number> => ({
  key,
  expects: 'day',
  read: (text) => {
    const found = parseDay(text);
    return found !== null && found >= firstDay && found <= lastDay ? found : undefined;
  },
  write: formatDay,
});

export const text = (key: string): Form<string> => ({
  key,
  expects: 'text',
  read: (raw) => {
    const clean = plainName(raw);
    return clean === '' || clean.length > longestName ? undefined : clean;
  },
  write: (value) => value,
});

/** As it is kept: two ids may differ in what no eye sees. */
export const id = (key: string): Form<string> => ({
  key,
  expects: 'text',
  read: (raw) => (raw === '' || raw.length > longestId || /\p{Cs}/u.test(raw) ? undefined : raw),
  write: (value) => value,
});

/** 1950-01-01 and 2090-12-31: the years the command line takes for today. */
const firstDay = -7305;
const lastDay = 44_194;

/** A number with a decimal point or comma, and nothing else; null otherwise. */
export function readNumber(raw: string): number | null {
  const trimmed = raw.trim().replace('−', '-');
  return /^[+-]?\d{1,7}([.,]\d{0,12})?$/.test(trimmed) ? Number(trimmed.replace(',', '.')) : null;
}

/** A name as it may be shown: no control or direction marks, spaces single. */
export function plainName(raw: string): string {
  return raw
    .replace(/[\p{C}\p{Zl}\p{Zp}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}
