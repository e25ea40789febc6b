import { shown } from '@neckfall/words';

/** A document, exact; in it too what would steer a screen is spelt out, in the way of JSON (RFC 8259, section 7). */
export function jsonText(document: unknown, indent?: number): string {
  const lines = JSON.stringify(document, null, indent).split('\n');
  return `${lines.map((line) => shown(line, inUnits)).join('\n')}\n`;
}

function inUnits(character: string): string {
  const units = Array.from({ length: character.length }, (_, at) => character.charCodeAt(at));
  return units.map((unit) => `\\u${unit.toString(16).padStart(4, '0')}`).join('');
}
