import {
  type AtlasEntry,
  classOfType,
  type DayNumber,
  dayLengthClasses,
  onionTypes,
  startMethods,
  verdicts,
} from '@neckfall/engine';

/** Numbers that an entry is kept in. */
const perEntry = 6;
/** Numbers that a point's entries are kept in: each class started each way, in the order the engine gives them. */
export const perPoint = dayLengthClasses.length * startMethods.length * perEntry;

/** The entries of a point as numbers: days from the first day on, NaN for what never comes. */
export function packEntries(entries: readonly AtlasEntry[], from: DayNumber): Float32Array {
  const packed = new Float32Array(perPoint);
  entries.forEach((entry, at) => {
    const { startDay, goodShare, neckFallDay, bulbDiameterMm, worth } = entry;
    const days = neckFallDay === null ? Number.NaN : neckFallDay - from;
    const words = [startDay - from, goodShare, days, bulbDiameterMm ?? Number.NaN, worth, codeOf(entry)];
    packed.set(words, at * perEntry);
  });
  return packed;
}

/** @param packed of one point */
export function unpackEntries(packed: Float32Array, from: DayNumber): AtlasEntry[] {
  return Array.from({ length: perPoint / perEntry }, (_, at): AtlasEntry => {
    const [startDays, goodShare, fallDays, bulbMm, worth, code] = packed.subarray(at * perEntry);
    const type = onionTypes[code >> 6];
    return {
      class: classOfType[type],
      type,
      start: startMethods[at % startMethods.length],
      isAtHome: (code & 1) === 1,
      startDay: from + startDays,
      goodShare,
      outcome: verdicts[(code >> 2) & 15],
      gamble: (code & 2) === 2,
      neckFallDay: Number.isNaN(fallDays) ? null : from + fallDays,
      bulbDiameterMm: Number.isNaN(bulbMm) ? null : bulbMm,
      worth,
    };
  });
}

function codeOf({ type, outcome, gamble, isAtHome }: AtlasEntry): number {
  return (
    (onionTypes.indexOf(type) << 6) |
    (verdicts.indexOf(outcome) << 2) |
    (Number(gamble) << 1) |
    Number(isAtHome)
  );
}
