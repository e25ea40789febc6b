import type { PlaceYear } from '@neckfall/answers';
import { type DayLengthClass, dayLengthClasses, parseDay, startMethods } from '@neckfall/engine';
import type { CropFacts } from '@neckfall/pictures';

/** A document `neckfall/year-line@1`, as far as a picture needs it. */
export type YearDocument = {
  engine: string;
  latitudeDeg: number;
  longitudeDeg: number;
  name: string | null;
  years: number;
  weather: 'drawn' | 'some';
  made: number;
  class: DayLengthClass;
  needSunUpH: number;
  year: PlaceYear;
  crop: CropFacts | null;
};

const mostDays = 1000;
const kinds = ['start', 'out', 'long', 'big', 'ready', 'bulbs', 'tops'] as const;

/** Reads what was fetched; what is no such document is told by the part of it that is not as it should be. */
export function readYear(document: unknown): YearDocument | { problem: string } {
  try {
    return yearOf(document);
  } catch (error) {
    return { problem: (error as Error).message };
  }
}

function yearOf(document: unknown): YearDocument {
  const all = record(document, 'document');
  choice(all.schema, 'schema', ['neckfall/year-line@1']);
  const place = record(all.place, 'place');
  const sunUpH = numbers(all.sunUpH, 'sunUpH', 0, 24);
  const { length } = sunUpH;
  return {
    engine: text(all.engine, 'engine'),
    latitudeDeg: number(place.latitudeDeg, 'latitudeDeg', -90, 90),
    longitudeDeg: number(place.longitudeDeg, 'longitudeDeg', -180, 180),
    name: place.name === null ? null : text(place.name, 'name'),
    years: number(all.years, 'years', 1, 200),
    weather: choice(all.weather, 'weather', ['drawn', 'some']),
    made: day(all.made, 'made'),
    class: choice(all.class, 'class', dayLengthClasses),
    needSunUpH: number(all.needSunUpH, 'needSunUpH', 0, 24),
    year: {
      firstDay: day(all.firstDay, 'firstDay'),
      sunUpH,
      rainMm: numbers(all.rainMm, 'rainMm', 0, 1000, length),
      frostShare: numbers(all.frostShare, 'frostShare', 0, 1, length),
      highC: numbers(all.highC, 'highC', -90, 70, length),
      months: list(all.months, 'months', 12, 12).map((found) => {
        const month = record(found, 'months');
        return {
          sunUpH: number(month.sunUpH, 'sunUpH', 0, 24),
          rainMm: number(month.rainMm, 'rainMm', 0, 20_000),
          frostNights: number(month.frostNights, 'frostNights', 0, 31),
          highC: number(month.highC, 'highC', -90, 70),
        };
      }),
    },
    crop: all.crop === null ? null : cropOf(record(all.crop, 'crop')),
  };
}

function cropOf(crop: Record<string, unknown>): CropFacts {
  return {
    start: choice(crop.start, 'start', startMethods),
    leaves: list(crop.leaves, 'leaves').map((found) => {
      const step = record(found, 'leaves');
      return { day: day(step.date, 'date'), made: number(step.made, 'made', 0, 100) };
    }),
    leavesMade: crop.leavesMade === null ? null : leavesOf(record(crop.leavesMade, 'leavesMade')),
    bulb: list(crop.bulb, 'bulb').map((found) => {
      const at = record(found, 'bulb');
      return { day: day(at.date, 'date'), acrossMm: number(at.acrossMm, 'acrossMm', 0, 1000) };
    }),
    topsOver: crop.topsOver === null ? null : day(crop.topsOver, 'topsOver'),
    marks: list(crop.marks, 'marks', 1, kinds.length).map((found) => {
      const mark = record(found, 'marks');
      const { from, to } = mark;
      return {
        kind: choice(mark.kind, 'kind', kinds),
        day: day(mark.date, 'date'),
        span: from === null || to === null ? null : { from: day(from, 'from'), to: day(to, 'to') },
      };
    }),
  };
}

const leavesOf = (leaves: Record<string, unknown>) => ({
  day: day(leaves.date, 'date'),
  count: number(leaves.count, 'count', 0, 100),
});

function record(found: unknown, name: string): Record<string, unknown> {
  if (typeof found !== 'object' || found === null || Array.isArray(found)) throw new Error(name);
  return found as Record<string, unknown>;
}

function list(found: unknown, name: string, least = 0, most = mostDays): unknown[] {
  if (!Array.isArray(found) || found.length < least || found.length > most) throw new Error(name);
  return found;
}

function numbers(found: unknown, name: string, min: number, max: number, length?: number): number[] {
  return list(found, name, length ?? 365, length).map((value) => number(value, name, min, max));
}

function number(found: unknown, name: string, min: number, max: number): number {
  if (typeof found !== 'number' || !(found >= min && found <= max)) throw new Error(name);
  return found;
}

function text(found: unknown, name: string): string {
  if (typeof found !== 'string' || found.length > 200) throw new Error(name);
  return found;
}

function day(found: unknown, name: string): number {
  const parsed = typeof found === 'string' ? parseDay(found) : null;
  if (parsed === null) throw new Error(name);
  return parsed;
}

function choice<Choice extends string>(found: unknown, name: string, choices: readonly Choice[]): Choice {
  const known = choices.find((one) => one === found);
  if (known === undefined) throw new Error(name);
  return known;
}
