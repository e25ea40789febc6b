import { type UnitName, unitOf } from '../units.ts';

/** A column's name as the file has it, in plain words, and the unit that it states. */
export type HeaderName = {
  /** As in the file. */
  column: string;
  /** Small letters without accents, words parted by single spaces, with a space before and after. */
  words: string;
  unit: UnitName | null;
  /** Amount in an hour or a minute, as a rate of rain. */
  isRate: boolean;
};

/** UTF-8 that was read as Windows-1252, as it comes about in spreadsheets. */
const misread: readonly [string, string][] = [
  ['â„ƒ', '°C'],
  ['â„‰', '°F'],
  ['Â°', '°'],
  ['Âº', '°'],
  ['Â²', '²'],
  ['Ã¤', 'ä'],
  ['Ã¶', 'ö'],
  ['Ã¼', 'ü'],
  ['Ã„', 'Ä'],
  ['Ã–', 'Ö'],
  ['Ãœ', 'Ü'],
  ['ÃŸ', 'ß'],
  ['Ã©', 'é'],
  ['Ã¨', 'è'],
  ['Ã¡', 'á'],
  ['Ã³', 'ó'],
  ['Ã§', 'ç'],
  ['Ã£', 'ã'],
  ['Ã±', 'ñ'],
  ['Ãº', 'ú'],
  ['Ã­', 'í'],
];

export function headerName(column: string): HeaderName {
  let text = column;
  if (/[âÂÃ]/.test(text)) for (const [wrong, right] of misread) text = text.replaceAll(wrong, right);
  const { unit, isRate, rest } = takeUnit(text);
  return { column, words: ` ${wordsOf(rest)} `, unit, isRate };
}

/** Lost letters stay as `?`, so that a word can be known by the others. */
function wordsOf(text: string): string {
  return text
    .replace(/([a-z\u00e0-\u00ff])([A-Z][a-z])/g, '$1 $2')
    .replace(/([a-z])([A-Z]+)$/, '$1 $2')
    .replaceAll('ß', 'ss')
    .replace(/[øł]/gi, (letter) => (/ø/i.test(letter) ? 'o' : 'l'))
    .replace(/æ/gi, 'ae')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/\uFFFD+/g, '?')
    .replace(/[^a-z0-9?]+/g, ' ')
    .trim();
}

const perTime = /(?:\/|\bper\s+|\bpro\s+)\s*(?:h|hr|hour|std|stunde|min|minute|s)\b\.?\)?$|[\s\d]h-1$/i;

/** A name and the unit behind it: of two words, or one. */
const endings = [
  /^(.*\S)(?:\s*[,/|:]\s*|[\s_.-]+)([a-z\d.°]+[\s_/]\S{1,8})$/i,
  /^(.*\S)(?:\s*[,/|:]\s*|[\s_.,-]+)(\S+)$/,
];

/** Takes the unit out of a name: in brackets, after a comma, or at its end. */
function takeUnit(text: string): { unit: UnitName | null; isRate: boolean; rest: string } {
  for (const inside of text.matchAll(/[([{]([^)\]}]*)[)\]}]?/g)) {
    for (const part of [inside[1]!, ...inside[1]!.split(/[,;]/)]) {
      const found = statedUnit(part);
      if (found !== null) return { ...found, rest: text.replace(inside[0], ' ') };
    }
  }
  for (const end of endings) {
    const parts = end.exec(text);
    const found = parts === null ? null : statedUnit(parts[2]!);
    if (parts === null || found === null) continue;
    // what ends in "in" without rain is indoors
    if (/^in$/i.test(parts[2]!) && !isOfRain.test(parts[1]!)) continue;
    return { ...found, rest: parts[1]!.replace(/\s+in$/i, '') };
  }
  const joined =
    /^(.*(?:temp|high|low|max|min|avg|out|tmax|tmin|tmean|temperature)\d?)([CFcf])$/.exec(text) ??
    /^(.*(?:rain|precip|regen|rainfall|day|daily|week|weekly|month|monthly|year|yearly|total|event|hourly))(mm|in|MM|IN)$/i.exec(
      text,
    );
  const unit = joined === null ? null : unitOf(joined[2]!);
  return joined && unit !== null
    ? { unit, isRate: false, rest: joined[1]! }
    : { unit: null, isRate: false, rest: text };
}

const isOfRain =
  /rain|precip|regen|prcp|niederschlag|lluvia|chuva|pioggia|pluie|neerslag|opad|nederb|nedb.r|regn|fall|day|year|month/i;

/** The unit a text states, also as an amount in a time. */
function statedUnit(text: string): { unit: UnitName; isRate: boolean } | null {
  const plain = unitOf(text);
  if (plain !== null) return { unit: plain, isRate: false };
  const rate = text
    .trim()
    .replace(perTime, '')
    .replace(/\/\s*\d+\s*min$/i, '');
  if (rate === text.trim()) return null;
  const of = unitOf(rate);
  return of === null ? null : { unit: of, isRate: perTime.test(text.trim()) };
}
