/** Lists and records within each other: a garden has four such levels, and fields unknown here may have more. */
export const mostLevels = 64;

/** Whether lists and records lie deeper in each other than anything that is to be written or kept again may. */
export function isNestedTooDeep(value: unknown): boolean {
  let layer = [value].filter(isHolder);
  for (let level = 0; layer.length > 0; level++) {
    if (level === mostLevels) return true;
    layer = layer.flatMap((holder) =>
      (Array.isArray(holder) ? holder : Object.values(holder)).filter(isHolder),
    );
  }
  return false;
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
