import { colours } from '@neckfall/data';
import {
  dayLengthClasses,
  likes,
  passedOver,
  questionAnswers,
  questions,
  soilTextures,
  startMethods,
  storePlaces,
  symptoms,
} from '@neckfall/engine';
import type { Command, Option } from 'commander';

/** What a shell can complete of the command line. */
export type Completions = {
  program: string;
  /** Commands, with the options of each; those without a command under the name ''. */
  commands: { name: string; description: string; words: readonly string[]; options: Completed[] }[];
};

export type Completed = { flag: string; description: string; takes: Taken };

/** What follows an option: nothing, anything, a file, or one of some words. */
type Taken = 'nothing' | 'anything' | 'file' | readonly string[];

/** Words that an option takes and its own `<a|b>` does not list. */
const wordsFor: Record<string, readonly string[]> = {
  '--start': startMethods,
  '--class': dayLengthClasses,
  '--soil': soilTextures,
  '--colour': colours,
  '--store': storePlaces,
  '--like': likes,
  '--seen': symptoms,
  '--said': questions.flatMap((question) =>
    [...questionAnswers[question], passedOver].map((answer) => `${question}=${answer}`),
  ),
};

export const shells = ['bash', 'zsh', 'fish'] as const;
export type Shell = (typeof shells)[number];

export function completionsOf(root: Command): Completions {
  return {
    program: root.name(),
    commands: [root, ...root.commands].map((command) => ({
      name: command === root ? '' : command.name(),
      description: command.description(),
      words: wordsOf(command),
      options: [...command.options.map(completed), help],
    })),
  };
}

const help: Completed = { flag: '--help', description: '', takes: 'nothing' };

/** Words that may stand without an option: the commands, or what `completion` is asked for. */
function wordsOf(command: Command): readonly string[] {
  if (command.name() === 'completion') return shells;
  return command.commands.map((sub) => sub.name());
}

function completed({ long, flags, description }: Option): Completed {
  return { flag: long ?? flags, description, takes: takenBy(long ?? '', /<(.*)>/.exec(flags)?.[1]) };
}

function takenBy(flag: string, value: string | undefined): Taken {
  if (value === undefined) return 'nothing';
  if (value === 'file') return 'file';
  return wordsFor[flag] ?? (value.includes('|') ? value.split('|') : 'anything');
}
