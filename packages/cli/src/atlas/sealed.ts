import { createHash } from 'node:crypto';

const sumLength = 16;

/** A value as a line led by the checksum of its JSON. */
export function sealed(value: object): string {
  const text = JSON.stringify(value);
  return `${sumOf(text)} ${text}`;
}

/** The value of such a line; null where the line was torn or changed. */
export function unsealed(line: string): unknown {
  const text = line.slice(sumLength + 1);
  return line.slice(0, sumLength) === sumOf(text) ? JSON.parse(text) : null;
}

function sumOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, sumLength);
}
