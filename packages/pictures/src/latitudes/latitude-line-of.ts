import { latitudeName } from '@neckfall/answers';
import {
  classOfType,
  type DayLengthClass,
  lastLatitude,
  type OnionType,
  type Verdict,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { DataTableProps } from '../drawing/data-table.tsx';
import type { LatitudeLineProps, LatitudeStretch } from './latitude-line.tsx';

/** What does best at a degree when sown on its own best day. */
export type BestOfDegree = {
  degree: number;
  type: OnionType;
  isGood: boolean;
  outcome: Verdict;
  startDay: number;
  acrossMm: number | null;
};

type Input = {
  /** From the equator on. */
  known: readonly BestOfDegree[];
  here: number;
  side: 1 | -1;
  speaker: Speaker;
};

const tickEvery = 10;

/** All a latitude line needs but its id and width. */
export function latitudeLineOf({
  known,
  here,
  side,
  speaker,
}: Input): Omit<LatitudeLineProps, 'id' | 'width'> {
  const { say, all } = speaker;
  const stretches = stretchesOf(known).map(({ from, to, kind }) => ({
    from,
    to,
    text: kind === null ? say('picture.latitude.none') : say(`class.${kind}`),
  }));
  const told = stretches.map(({ from, to, text }) =>
    say('picture.latitude.stretch', { from, to, what: text }),
  );
  return {
    summary: say('picture.latitude.summary', {
      here: latitudeName(side * here, speaker),
      stretches: all(told),
    }),
    best: known.map(({ degree, type, isGood }) => ({ degree, type: isGood ? type : null })),
    stretches,
    here: { degree: here, text: latitudeName(side * here, speaker) },
    ticks: Array.from({ length: lastLatitude / tickEvery + 1 }, (_, i) => ({
      degree: i * tickEvery,
      text: say('picture.latitude.tick', { degrees: i * tickEvery }),
    })),
  };
}

/** Each degree that is known a row: what does best, sown when, how large. */
export function latitudeTableOf({ known, side, speaker }: Omit<Input, 'here'>): DataTableProps {
  const { say, day, quantity } = speaker;
  return {
    caption: say('picture.latitude.table'),
    head: [
      say('picture.latitude.column-latitude'),
      say('picture.latitude.column-best'),
      say('picture.latitude.column-sown'),
      say('picture.latitude.column-comes'),
      say('picture.section.across'),
    ],
    rows: known.map(({ degree, type, outcome, startDay, acrossMm }) => [
      latitudeName(side * degree, speaker),
      say(`type.${type}`),
      day(startDay),
      say(`verdict.${outcome}`),
      acrossMm === null ? say('none') : quantity('bulbLength', acrossMm),
    ]),
  };
}

/** Runs of one class, whichever of its kinds is ahead. */
function stretchesOf(known: readonly BestOfDegree[]) {
  const stretches: (Omit<LatitudeStretch, 'text'> & { kind: DayLengthClass | null })[] = [];
  known.forEach(({ degree, type, isGood }, i) => {
    const kind = isGood ? classOfType[type] : null;
    const to = (known[i + 1]?.degree ?? lastLatitude + 1) - 1;
    const last = stretches.at(-1);
    if (last && last.kind === kind) last.to = to;
    else stretches.push({ from: degree, to, kind });
  });
  return stretches;
}
