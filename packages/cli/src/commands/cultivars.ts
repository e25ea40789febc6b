import { type Cultivar, colours, cultivars, findCultivar, searchCultivars } from '@neckfall/data';
import { dayLengthClasses } from '@neckfall/engine';
import type { Say, Speaker } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer/answer.ts';
import { deliver } from '../answer/deliver.ts';
import { cultivarRows } from '../documents/cultivars-csv.ts';
import { cultivarsDocument } from '../documents/cultivars-document.ts';
import type { CultivarsAsked } from '../documents/cultivars-schema.ts';
import { addOutputOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import type { RawOutputOptions } from '../options/place-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { csv } from '../output/csv.ts';
import { refuse } from '../refusal/refusal.ts';
import { cultivarsText, cultivarText } from '../text/cultivars-text.ts';
import { parseChoice } from '../values/choice.ts';

type Raw = RawOutputOptions & { find?: string; class?: string; colour?: string };

export function addCultivars(root: Command, say: Say): void {
  const command = root
    .command('cultivars')
    .description(say('help.cultivars'))
    .argument('[name]', say('help.cultivar-name'))
    .option('--find <text>', say('help.find'))
    .option('--class <name>', say('help.filter-class'))
    .option('--colour <name>', say('help.colour'));
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'cultivars "Walla Walla"'))
    .action((name: string | undefined, raw: Raw) => deliver(answerOf(name, raw), raw));
}

/** The catalogue: one onion in full, or a table of those asked for. */
function answerOf(name: string | undefined, raw: Raw): Answer {
  const speaker = speakerFor(raw);
  const asked = readAsked(name, raw, speaker);
  const found = asked.name === null ? filtered(asked) : named(asked.name);
  const document = () => cultivarsDocument(found, asked, speaker);
  return {
    text: () =>
      asked.name !== null && found.length === 1
        ? cultivarText(found[0], speaker)
        : cultivarsText(found, speaker),
    json: document,
    csv: () => csv(cultivarRows(document())),
    warnings: [],
  };
}

function readAsked(name: string | undefined, raw: Raw, speaker: Speaker): CultivarsAsked {
  const asked = {
    name: name?.trim() || null,
    find: raw.find ?? null,
    class: raw.class === undefined ? null : parseChoice(raw.class, '--class', dayLengthClasses, speaker),
    colour: raw.colour === undefined ? null : parseChoice(raw.colour, '--colour', colours, speaker),
  };
  const filter = (['find', 'class', 'colour'] as const).find((option) => asked[option] !== null);
  if (asked.name !== null && filter) {
    const values = { other: `"${asked.name}"`, why: speaker.say('clash.one-onion') };
    throw refuse('contradiction', { field: `--${filter}`, values });
  }
  return asked;
}

/** The onion of that name, else those with the text in their names. */
function named(name: string): readonly Cultivar[] {
  const answer = findCultivar(name);
  if (answer.match) return [answer.match];
  const like = searchCultivars(name);
  if (like.length > 0) return like;
  throw refuse('cultivar-unknown', { values: { value: name }, nearest: answer.nearest });
}

function filtered({ find, class: dayLengthClass, colour }: CultivarsAsked): readonly Cultivar[] {
  return (find === null ? cultivars : searchCultivars(find)).filter(
    (cultivar) =>
      (dayLengthClass === null || cultivar.class === dayLengthClass) &&
      (colour === null || cultivar.colour === colour),
  );
}
