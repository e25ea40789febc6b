/**
 * Shapes of postal codes, in small letters, common practice and from memory: digits in one group or two (90210,
 * 90210-1234, 114 55, 00-950, 100-0001, 1012 AB); the United Kingdom (SW1A, SW1A 1AA), Canada (K1A 0B1), Ireland
 * (D02 X285). Three digits at least: no town's name has so many but 100 Mile House and Zona 179.
 */
const SHAPES = [
  String.raw`\d{3,}(?:[ -]\d{2,4})?(?: ?[a-z]{2})?`,
  String.raw`\d{2}-\d{3}`,
  String.raw`[a-z]{1,2}\d[a-z\d]?(?: ?\d[a-z]{2})?`,
  String.raw`[a-z]\d[a-z](?: ?\d[a-z]\d)?`,
  String.raw`[a-z]\d[\dw] ?[a-z\d]{4}`,
].join('|');

const CODE_ALONE = new RegExp(`^(?:${SHAPES})$`);
const CODE_FIRST = new RegExp(`^(?:${SHAPES})[ ,]+(?=\\p{L})`, 'u');
const CODE_LAST = new RegExp(`[ ,]+(?:${SHAPES})$`);

/** What is left of a text without its postal code: empty where it is nothing else; null where it has none. */
export function withoutPostcode(text: string): string | null {
  const plain = text.trim().toLowerCase();
  if (CODE_ALONE.test(plain)) return '';
  const first = plain.replace(CODE_FIRST, '');
  const rest = first.replace(CODE_LAST, '');
  return rest === plain ? null : rest;
}
