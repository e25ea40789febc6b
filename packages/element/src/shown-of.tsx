import { engineVersion } from '@neckfall/engine';
import {
  type CropFacts,
  cropSaid,
  DataTable,
  type DataTableProps,
  skyLineOf,
  YearLine,
  type YearLineProps,
  yearLineOf,
  yearTableOf,
} from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import type { VNode } from 'preact';
import type { Problem } from './problem.ts';
import type { Asked } from './read-attributes.ts';
import type { YearDocument } from './read-year.ts';
import { skyYear } from './sky-year.ts';
import { pointWords, sourceOfData, sourceOfSky } from './source-words.ts';
import { cropTable, needTable } from './tables.ts';
import { unlikeData } from './unlike-data.ts';

type Fetched = YearDocument | { problem: string } | null;

/** A picture with its words: what an element shows where nothing is wrong. */
type Shown = {
  line: Omit<YearLineProps, 'id' | 'width'>;
  source: string;
  /** What the picture lacks, in words. */
  lack: string | null;
  tables: readonly DataTableProps[];
};

/** All that an element shows. */
export function shownOf(
  asked: Asked,
  fetched: Fetched,
  width: number,
  speaker: Speaker,
  problemWords: (problem: Problem) => string,
): VNode {
  const { say } = speaker;
  const wrong = asked.problems.map(problemWords);
  const told = whatIsShown(asked, fetched, speaker);
  if (typeof told === 'string') wrong.push(told);
  const problems = wrong.map((text) => (
    <p key={text} class="problem" role="alert">
      {text}
    </p>
  ));
  if (typeof told === 'string') return <>{problems}</>;
  const { line, source, lack, tables } = told;
  const { note, ...drawn } = line;
  return (
    <>
      {problems}
      <YearLine id="year" width={width} note={null} {...drawn} />
      {note !== null && <p aria-hidden="true">{note}</p>}
      {lack !== null && <p>{lack}</p>}
      <details>
        <summary>{say('element.numbers')}</summary>
        {tables.map((table) => (
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard
          <section key={table.caption} class="scroll" aria-label={table.caption} tabIndex={0}>
            <DataTable {...table} />
          </section>
        ))}
      </details>
      <p class="source">{source}</p>
    </>
  );
}

/** What there is to be shown; a sentence where there is nothing. */
function whatIsShown(asked: Asked, fetched: Fetched, speaker: Speaker): Shown | string {
  const { say } = speaker;
  const { latitudeDeg, longitudeDeg, data } = asked;
  if (data !== null && fetched !== null && !('problem' in fetched)) {
    const unlike = unlikeData(asked, fetched, speaker);
    return unlike ?? ofData(asked, fetched, speaker);
  }
  const lack =
    data === null
      ? say('element.sky-alone')
      : fetched === null
        ? say('element.waiting')
        : say('element.no-data', { url: data, reason: 'problem' in fetched ? fetched.problem : '' });
  if (latitudeDeg === null || longitudeDeg === null) return data === null ? say('element.no-place') : lack;
  return ofSky(asked, { latitudeDeg, longitudeDeg }, lack, speaker);
}

function ofData(asked: Asked, found: YearDocument, speaker: Speaker): Shown {
  const { year, needSunUpH, crop } = found;
  const said = crop && cropSaid(crop, speaker);
  const line = yearLineOf({
    year,
    needSunUpH,
    today: shownDay(asked.today, year),
    crop: said,
    speaker,
  });
  return {
    line,
    source: sourceOfData(asked.name, found, speaker),
    lack: null,
    tables: [yearTableOf({ year, speaker }), ...(said === null ? [] : [cropTable(said, speaker)])],
  };
}

function ofSky(
  asked: Asked,
  point: { latitudeDeg: number; longitudeDeg: number },
  lack: string,
  speaker: Speaker,
): Shown {
  const { firstDay, sunUpH, needs } = skyYear(point, asked);
  const days = { firstDay, sunUpH };
  const { start, startDay } = asked;
  const facts: CropFacts | null =
    start === null || startDay === null
      ? null
      : {
          start,
          leaves: [],
          leavesMade: null,
          bulb: [],
          topsOver: null,
          marks: [{ kind: 'start', day: startDay, span: null }],
        };
  return {
    line: skyLineOf({
      ...days,
      needSunUpH: needs.find(({ class: one }) => one === asked.class)?.hours ?? null,
      today: shownDay(asked.today, days),
      crop: facts && cropSaid(facts, speaker),
      speaker,
    }),
    source: sourceOfSky(pointWords(asked.name, point, speaker), engineVersion, speaker),
    lack,
    tables: [needTable(days, needs, speaker)],
  };
}

function shownDay(day: number, { firstDay, sunUpH }: { firstDay: number; sunUpH: readonly number[] }) {
  return day >= firstDay && day < firstDay + sunUpH.length ? day : null;
}
