import {
  type AtlasAsked,
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

/** As `leadingEntry` of all entries of a point, where that one alone is unpacked. @param packed of one point */
export function unpackLead(packed: Float32Array, from: DayNumber, among: AtlasAsked): AtlasEntry {
  let best = -1;
  for (let at = 0; at < perPoint / perEntry; at++) {
    const isAmong =
      (among.class === null || among.class === classOfType[typeAt(packed, at)]) &&
      (among.start === null || among.start === startAt(at));
    if (isAmong && (best < 0 || packed[at * perEntry + worthAt] > packed[best * perEntry + worthAt]))
      best = at;
  }
  return unpackEntry(packed, best, from);
}

const worthAt = 4;
const codeAt = 5;
const startAt = (at: number) => startMethods[at % startMethods.length];
const typeAt = (packed: Float32Array, at: number) => onionTypes[packed[at * perEntry + codeAt] >> 6];

function unpackEntry(packed: Float32Array, at: number, from: DayNumber): AtlasEntry {
  const [startDays, goodShare, fallDays, bulbMm, worth, code] = packed.subarray(at * perEntry);
  const type = typeAt(packed, at);
  return {
    class: classOfType[type],
    type,
    start: startAt(at),
    isAtHome: (code & 1) === 1,
    startDay: from + startDays,
    goodShare,
    outcome: verdicts[(code >> 2) & 15],
    gamble: (code & 2) === 2,
    neckFallDay: Number.isNaN(fallDays) ? null : from + fallDays,
    bulbDiameterMm: Number.isNaN(bulbMm) ? null : bulbMm,
    worth,
  };
}

function codeOf({ type, outcome, gamble, isAtHome }: AtlasEntry): number {
  return (
    (onionTypes.indexOf(type) << 6) |
    (verdicts.indexOf(outcome) << 2) |
    (Number(gamble) << 1) |
    Number(isAtHome)
  );
}
