import { foldName } from './fold-name.ts';

/** One reading of what was typed: the name of a town, then words for where it is; as typed, and folded. */
export type NameAndArea = {
  readonly name: string;
  readonly area: string;
  readonly foldedName: string;
  /** Empty where nothing follows the separator yet. */
  readonly foldedArea: string;
  /** Parted by a comma: the typist says that the name ends here. */
  readonly isMarked: boolean;
};

/** "Saint Vincent and the Grenadines" has five words; a region and a country can be more. */
const MOST_AREA_WORDS = 8;

/** Every way to take the last words as the place where a town is; the longest name first. */
export function namesAndAreas(text: string): NameAndArea[] {
  const gaps = [...text.trimStart().matchAll(/[\s,;/()]+/g)].slice(-MOST_AREA_WORDS);
  const start = text.length - text.trimStart().length;
  const readings = gaps.map((gap): NameAndArea => {
    const at = start + gap.index;
    const name = text.slice(0, at).trim();
    const area = text.slice(at + gap[0].length).trim();
    const isMarked = gap[0].includes(',');
    return { name, area, foldedName: foldName(name), foldedArea: foldName(area), isMarked };
  });
  return readings.reverse().filter(({ foldedName }) => foldedName !== '');
}
