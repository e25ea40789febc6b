import { cultivarFacts, cultivarHeadline } from '@neckfall/answers';
import { type Cultivar, catalogueSources } from '@neckfall/data';
import type { StartMethod } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

/** Onions as a table, a line each. */
export function cultivarsText(found: readonly Cultivar[], speaker: Speaker): string {
  const { say, numberRange } = speaker;
  if (found.length === 0) return `${say('cultivars.none')}\n`;
  const columns = ['name', 'type', 'colour', 'keeps', 'starts'] as const;
  return [
    wrap(say('cultivars.list', { count: found.length })),
    '',
    table(
      columns.map((column) => ({ title: say(`cultivars.column.${column}`) })),
      found.map((cultivar) => [
        cultivar.name,
        say(`type.${cultivar.type}`),
        cultivar.colour ? say(`colour.${cultivar.colour}`) : say('none'),
        say('cultivars.months', { range: numberRange(...cultivar.keepsMonths, 1) }),
        soldAs(cultivar, speaker),
      ]),
    ),
    '',
    howWeKnow([], speaker),
    '',
  ].join('\n');
}

/** One onion in full: what is known, each line with its source. */
export function cultivarText(cultivar: Cultivar, speaker: Speaker): string {
  const { say } = speaker;
  const facts = cultivarFacts(cultivar, speaker);
  const sources = [...new Set(facts.flatMap(({ origin }) => ('source' in origin ? [origin.source] : [])))];
  const lines = facts.map(({ label, value, origin }) => {
    const from =
      'source' in origin
        ? say('cultivars.from.source', { number: sources.indexOf(origin.source) + 1 })
        : origin.words;
    return [label, from === '' ? value : `${value} (${from})`] as const;
  });
  const width = Math.max(...lines.map(([label]) => label.length));
  return [
    wrap(cultivarHeadline(cultivar, speaker)),
    ...(cultivar.kind === 'bulb-onion' ? [] : [wrap(say('cultivars.not-tried'))]),
    '',
    say('cultivars.known'),
    ...lines.map(([label, value]) => `  ${label.padEnd(width)}  ${wrap(value, width + 4)}`),
    '',
    howWeKnow(sources, speaker),
    '',
  ].join('\n');
}

function howWeKnow(sources: readonly string[], { say }: Speaker): string {
  const lines = [
    ...sources.map((key, i) => {
      const { title, url } = catalogueSources[key];
      return say('cultivars.source', { number: i + 1, title: `${title}, ${url}` });
    }),
    say('cultivars.assumed.type'),
    say('cultivars.assumed.keeps'),
    say('cultivars.assumed.memory'),
  ];
  return [say('how.title'), ...lines.map((line) => `  ${wrap(line, 2)}`)].join('\n');
}

const soldWords = {
  'direct-seed': 'cultivars.seed',
  'raised-seedlings': 'cultivars.seed',
  'bought-transplants': 'cultivars.plants',
  sets: 'cultivars.sets',
} as const satisfies Record<StartMethod, string>;

function soldAs({ starts }: Cultivar, { say, all }: Speaker): string {
  const words = new Set(starts.map((start) => say(soldWords[start])));
  return words.size > 0 ? all([...words]) : say('cultivars.bulbs');
}
