import type { EmbeddedFace, Face } from '@neckfall/pictures';
import { type FaceFile, runsOf } from './faces.ts';
import { woffOf } from './woff-of.ts';

const families = {
  answers: { family: 'Answers', weight: 600 },
  text: { family: 'Plain', weight: 400 },
  bold: { family: 'Plain', weight: 600 },
} as const satisfies Record<Face, Pick<EmbeddedFace, 'family' | 'weight'>>;

const packed = new Map<string, string>();

/** The typefaces that some words are set in, ready to travel in a file. */
export function embeddedFaces(words: string): EmbeddedFace[] {
  return (Object.keys(families) as Face[]).flatMap((face) =>
    [...new Set(runsOf(words, face).map(({ file }) => file))].map((file) => ({
      ...families[face],
      base64: packedOf(file),
      format: 'woff' as const,
      unicodeRange: file.font.characterSet.map((code) => `U+${code.toString(16)}`).join(','),
    })),
  );
}

function packedOf({ name, bytes }: FaceFile): string {
  let text = packed.get(name);
  if (text === undefined) {
    text = woffOf(bytes).toString('base64');
    packed.set(name, text);
  }
  return text;
}
