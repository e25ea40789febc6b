import { refused } from './fixed-columns.ts';
import type { FileReading } from './found.ts';

export type JsonObject = { [name: string]: unknown };

/** What a document holds, or the refusal of one that is none. */
export function documentOf(text: string): { ok: true; content: unknown } | (FileReading & { ok: false }) {
  try {
    return { ok: true, content: JSON.parse(text) };
  } catch {
    return refused('bad-json', { received: text.slice(0, 40), expected: 'a whole JSON document' });
  }
}

function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The object of that name in another; an empty one where there is none. */
export function objectIn(holder: unknown, name: string): JsonObject {
  const value = isObject(holder) && Object.hasOwn(holder, name) ? holder[name] : null;
  return isObject(value) ? value : {};
}

export function listIn(holder: unknown, name: string): readonly unknown[] {
  const value = isObject(holder) && Object.hasOwn(holder, name) ? holder[name] : null;
  return Array.isArray(value) ? value : [];
}

export function textIn(holder: unknown, name: string): string | null {
  const value = isObject(holder) && Object.hasOwn(holder, name) ? holder[name] : null;
  return typeof value === 'string' ? value : null;
}

/** A number, written as one or as a text. */
export function numberIn(holder: unknown, name: string): number | null {
  const value = isObject(holder) && Object.hasOwn(holder, name) ? holder[name] : null;
  return numberOf(value);
}

export function numberOf(value: unknown): number | null {
  const number = typeof value === 'string' && value.trim() !== '' ? Number(value) : value;
  return typeof number === 'number' && Number.isFinite(number) ? number : null;
}
