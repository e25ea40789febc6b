/** Letters that no Unicode decomposition turns into plain Latin ones. */
const PLAIN_LETTERS = new Map(
  'ß ss,æ ae,œ oe,ø o,ł l,đ d,ð d,þ th,ı i,ħ h,ŧ t,ŋ n,ə a'
    .split(',')
    .map((pair) => pair.split(' ') as [string, string]),
);

/** Written short or in full by different people; expanded only in front of another word. */
const SHORT_WORDS = new Map([
  ['st', 'saint'],
  ['ste', 'sainte'],
  ['mt', 'mount'],
  ['ft', 'fort'],
]);

const SPECIAL = new RegExp(`[${[...PLAIN_LETTERS.keys()].join('')}]`, 'g');

function plainText(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\p{M}'’‘ʻʼ`´′]/gu, '')
    .replace(SPECIAL, (letter) => PLAIN_LETTERS.get(letter) ?? letter)
    .replace(/[^\p{L}\p{N}]+/gu, ' ');
}

function expandShortWords(plain: string): string {
  const words = plain.split(' ');
  for (let i = 0; i + 1 < words.length; i++) words[i] = SHORT_WORDS.get(words[i]) ?? words[i];
  return words.join(' ');
}

/**
 * The form in which place names are compared: small letters, no accents, no apostrophes, every other
 * punctuation a single space, St/Ste/Mt/Ft in full. Idempotent.
 */
export function foldName(text: string): string {
  return expandShortWords(plainText(text).trim());
}

/** As foldName, for a name still being typed: a space at the end says that the last word is complete. */
export function foldPrefix(text: string): string {
  return expandShortWords(plainText(text).trimStart());
}
