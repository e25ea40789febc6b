/** Lists and records within each other: a garden has four such levels, and fields unknown here may have more. */
export const mostLevels = 64;

const [quote, backslash] = [34, 92];
const [openList, closeList, openRecord, closeRecord] = [91, 93, 123, 125];

/**
 * Whether lists and records lie deeper in each other than anything that is to be written or kept again may.
 *
 * @param text JSON, which need not have been read yet: what is nested without end is slow to read
 */
export function isNestedTooDeep(text: string): boolean {
  let level = 0;
  for (let at = 0; at < text.length; at++) {
    const sign = text.charCodeAt(at);
    if (sign === quote) at = endOfString(text, at);
    else if (sign === openList || sign === openRecord) level++;
    else if (sign === closeList || sign === closeRecord) level--;
    if (level > mostLevels) return true;
  }
  return false;
}

function endOfString(text: string, start: number): number {
  let at = start + 1;
  while (at < text.length && text.charCodeAt(at) !== quote) at += text.charCodeAt(at) === backslash ? 2 : 1;
  return at;
}

function isHolder(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

/** How the JSON of a value begins: all of it, or at least the length asked for, of however large a value. */
export function jsonStart(value: unknown, length: number): string {
  // each level adds a bracket, so that none goes deeper than the length
  if (length <= 0) return '';
  if (typeof value === 'string') return JSON.stringify(value.slice(0, length));
  if (!isHolder(value)) return String(value);
  const isList = Array.isArray(value);
  let text = isList ? '[' : '{';
  const start = text.length;
  for (const [name, held] of isList ? value.entries() : Object.entries(value)) {
    if (text.length >= length) return text;
    if (text.length > start) text += ',';
    if (!isList) text += `${JSON.stringify(String(name).slice(0, length))}:`;
    text += jsonStart(held, length - text.length);
  }
  return text + (isList ? ']' : '}');
}
