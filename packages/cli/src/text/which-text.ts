import {
  type Advice,
  alikeSentence,
  bestOfYearSentence,
  choiceWhy,
  elsewhereSentence,
  isDoubtful,
  keepingWords,
  kindsElsewhereSentence,
  namedOf,
  namesOf,
  noNameHereSentence,
  spanSentence,
  whereHeadline,
  worthShowing,
} from '@neckfall/answers';
import { type StartTopic, startFacts } from '@neckfall/data';
import { type Choice, groupKinds, startMethods, typicalOf } from '@neckfall/engine';
import type { MessageKey, Speaker } from '@neckfall/words';
import type { Frame } from '../frame/frame.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

/** Names said in the first lines; the list further down has all. */
const namesAhead = 6;
const namesInLine = 8;

/**
 * @param all kinds tried, the best first; `limit`: how many to show; `compare`: whether the ways of starting one onion
 *   are to be set side by side; `country`: in whose shops names are looked for
 */
export function whichText(
  frame: Frame,
  all: readonly Choice[],
  {
    limit,
    advice,
    isAll,
    compare,
    country,
  }: { limit: number; advice: Advice; isAll: boolean; compare: boolean; country: string | null },
): string {
  const found = all.slice(0, limit);
  const considered = all.length;
  const choices = worthShowing(found);
  const { speaker, label } = frame;
  const { say } = speaker;
  const named = namedOf(advice).summary.plan;
  const best = all.find(({ kind }) => kind.type === named.type && kind.start === named.start) ?? choices[0];
  const { today } = frame.options;
  const bestOfYear = bestOfYearSentence(advice, today, speaker);
  const names = namesOf(best, speaker, namesAhead, country);
  const elsewhere =
    noNameHereSentence(all, country, speaker) ?? elsewhereSentence(best, all, country, speaker);
  const alike = alikeSentence(choices, best, speaker);
  const sections = [
    [
      wrap(whereHeadline(advice, label, today, speaker, isAll ? 'all' : 'list')),
      ...(isDoubtful(advice, all)
        ? [wrap(say('which.might', { names }))]
        : [
            ...(bestOfYear === null ? [] : [wrap(bestOfYear)]),
            wrap(say(best.kind.names.length > 1 ? 'which.names' : 'which.name', { names })),
            ...(elsewhere === null ? [] : [wrap(elsewhere)]),
            wrap(choiceWhy(best, speaker)),
            ...(alike === null ? [] : [wrap(alike)]),
          ]),
    ].join('\n'),
  ];
  if (compare) sections.push(startsTable(choices, speaker));
  else {
    sections.push(kindTable(choices, speaker), nameLines(choices, speaker));
    const kindsElsewhere = kindsElsewhereSentence(choices, all, country, speaker);
    if (kindsElsewhere !== null) sections.push(wrap(kindsElsewhere));
  }
  if (choices.length < found.length) sections.push(wrap(say('which.none-else', { count: considered })));
  else if (considered > choices.length)
    sections.push(wrap(say('which.more', { more: considered - choices.length })));
  sections.push(
    wrap(say('which.order')),
    howWeKnow(frame, null, spanSentence(namedOf(advice).summary, 'lead', speaker)),
  );
  return `${sections.join('\n\n')}\n`;
}

function kindTable(choices: readonly Choice[], speaker: Speaker): string {
  const { say, number } = speaker;
  const titles = ['rank', 'onion', 'start', 'neck-fall', 'diameter', 'good', 'flower', 'keeps'] as const;
  const rows = groupKinds(choices).map((group) => {
    const typical = typicalOf(group);
    return [
      number(typical.rank),
      say(`type.${group.type}`),
      startCell(typical, speaker),
      ...seasonCells(typical, speaker),
      keepingWords(typical, speaker),
    ];
  });
  return `${say('which.table')}\n${table(
    titles.map((title) => ({ title: say(`which.column.${title}`), right: title === 'rank' })),
    rows,
  )}`;
}

function startCell({ kind, summary }: Choice, { say, day }: Speaker): string {
  return say('where.start', { start: say(`start.${kind.start}`), date: day(summary.plan.startDay) });
}

function seasonCells({ summary }: Choice, { say, day, quantity }: Speaker): string[] {
  const { neckFall, bulbDiameterMm, seasonShares, boltedPlantsShare } = summary;
  return [
    neckFall.days ? day(neckFall.days.p50) : say('none'),
    bulbDiameterMm ? quantity('bulbLength', bulbDiameterMm.p50) : say('none'),
    say('which.good-years', { tenths: Math.round(10 * seasonShares.good) }),
    boltedPlantsShare
      ? say('which.in-flower', { tenths: Math.round(10 * boltedPlantsShare.p50) })
      : say('none'),
  ];
}

function nameLines(choices: readonly Choice[], speaker: Speaker): string {
  const { say, numberRange } = speaker;
  const lines = choices.map((choice) => {
    const { rank, kind } = choice;
    const line = say('which.line', {
      rank,
      kind: say('which.kind', { type: say(`type.${kind.type}`), start: say(`start.${kind.start}`) }),
      names: namesOf(choice, speaker, namesInLine),
      months: numberRange(...kind.keepsMonths, 1),
    });
    return `  ${wrap(line, 4)}`;
  });
  return [say('which.by-name'), ...lines].join('\n');
}

const comparedTopics = ['choice', 'losses', 'work'] as const satisfies readonly StartTopic[];

/** The ways of starting one onion side by side, then what is known of each. */
function startsTable(choices: readonly Choice[], speaker: Speaker): string {
  const { say, fact } = speaker;
  const titles = ['start', 'neck-fall', 'diameter', 'good', 'flower', 'time', ...comparedTopics] as const;
  const rows = choices.map((choice) => {
    const { kind, summary } = choice;
    const { days } = summary.neckFall;
    const weeks = days && Math.round((days.p50 - summary.plan.startDay) / 7);
    const { levels } = startFacts[kind.start];
    return [
      startCell(choice, speaker),
      ...seasonCells(choice, speaker),
      weeks === null ? say('none') : say('which.weeks', { weeks }),
      ...comparedTopics.map((topic) => say(`start-level.${topic}.${levels[topic]}` as MessageKey)),
    ];
  });
  const lines = choices.flatMap(({ kind }) => {
    const { facts } = startFacts[kind.start];
    const said = [facts.time, facts.bolting, facts.losses, facts.work, facts.cautions].flatMap((of) =>
      of.slice(0, 1).map(fact),
    );
    const start = say(`start-head.${kind.start}`);
    return [`  ${wrap(say('which.known-of', { start, facts: said.join(' ') }), 4)}`];
  });
  const absent = startMethods.filter((start) => !choices.some(({ kind }) => kind.start === start));
  return [
    say('which.starts', { name: choices[0].kind.names[0] }),
    table(
      titles.map((title) => ({ title: say(`which.column.${title}`) })),
      rows,
    ),
    ...lines,
    ...absent.map((start) => `  ${say('which.not-sold', { start: say(`start-head.${start}`) })}`),
  ].join('\n');
}
