/*
 * A JPEG as a camera writes it: the picture with segments put in behind its start mark. Forms as published: JPEG (ITU-T
 * T.81, B.1: segments), Exif 2.32 (JEITA CP-3451: APP1 with a TIFF of big-endian entries; GPS tags 1 to 4; orientation
 * 274), XMP (ISO 16684-3: APP1 under its own name).
 */

/** Where it says it was taken: 52° 4' 48" N, 3° 7' 48" W. */
const latitude = [52, 1, 4, 1, 48, 1];
const longitude = [3, 1, 7, 1, 48, 1];

/** @param orientation 6: the camera was held upright, and the picture lies on its side */
export function withPlace(jpeg: Uint8Array, orientation: 1 | 6): Uint8Array {
  const xmp = [...text('http://ns.adobe.com/xap/1.0/\0'), ...text('<x:xmpmeta>Ines Tarrant</x:xmpmeta>')];
  const segments = [
    ...segment(0xe1, [...text('Exif\0\0'), ...tiff(orientation)]),
    ...segment(0xe1, xmp),
    ...segment(0xed, text('Photoshop 3.0\0Pencarreg Bank')),
    ...segment(0xfe, text('taken by Bram Okoro')),
  ];
  return Uint8Array.from([...jpeg.subarray(0, 2), ...segments, ...jpeg.subarray(2)]);
}

/** Marks of the segments before the picture itself. */
export function segmentMarks(jpeg: Uint8Array): number[] {
  const marks: number[] = [];
  for (let at = 2; jpeg[at] === 0xff && jpeg[at + 1] !== 0xda; ) {
    marks.push(jpeg[at + 1]);
    at += 2 + jpeg[at + 2] * 256 + jpeg[at + 3];
  }
  return marks;
}

function tiff(orientation: number): number[] {
  const short = (tag: number, value: number) => [...two(tag), ...two(3), ...four(1), ...two(value), 0, 0];
  const long = (tag: number, value: number) => [...two(tag), ...two(4), ...four(1), ...four(value)];
  const letters = (tag: number, letter: string) => [
    ...two(tag),
    ...two(2),
    ...four(2),
    ...text(`${letter}\0\0\0`),
  ];
  const fractions = (tag: number, offset: number) => [...two(tag), ...two(5), ...four(3), ...four(offset)];
  // header 8, directory of 2 entries 30, GPS directory of 4 entries 54, then the fractions
  const gpsAt = 38;
  const fractionsAt = gpsAt + 54;
  return [
    ...text('MM\0*'),
    ...four(8),
    ...two(2),
    ...short(274, orientation),
    ...long(0x8825, gpsAt),
    ...four(0),
    ...two(4),
    ...letters(1, 'N'),
    ...fractions(2, fractionsAt),
    ...letters(3, 'W'),
    ...fractions(4, fractionsAt + 24),
    ...four(0),
    ...[...latitude, ...longitude].flatMap(four),
  ];
}

function segment(mark: number, content: readonly number[]): number[] {
  return [0xff, mark, ...two(content.length + 2), ...content];
}

const two = (value: number) => [value >> 8, value & 255];
const four = (value: number) => [...two(value >>> 16), ...two(value & 0xffff)];
const text = (letters: string) => [...letters].map((letter) => letter.charCodeAt(0));
