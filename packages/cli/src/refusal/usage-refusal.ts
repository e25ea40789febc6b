import type { Speaker } from '@neckfall/words';
import type { Command, CommanderError } from 'commander';
import { nearest } from './nearest.ts';
import { refuse } from './refusal.ts';

/** The option parser's complaints in our own words. */
export function usageRefusal(
  error: CommanderError,
  root: Command,
  args: readonly string[],
  speaker: Speaker,
) {
  const { any } = speaker;
  const commands = root.commands.map((command) => command.name());
  const command = root.commands.find((candidate) => args.includes(candidate.name())) ?? root;
  const quoted = /'([^']*)'/s.exec(error.message)?.[1] ?? '';
  switch (error.code) {
    case 'commander.unknownOption': {
      const flags = command.options.map(({ long }) => long ?? '');
      return refuse('unknown-option', {
        field: quoted,
        values: { value: quoted, command: command === root ? '' : command.name() },
        nearest: nearest(quoted.split('=')[0], flags),
      });
    }
    case 'commander.unknownCommand':
      return refuse('unknown-command', {
        values: { value: quoted },
        expected: any(commands),
        nearest: nearest(quoted, commands),
      });
    case 'commander.excessArguments': {
      const words = wordsOf(command, args);
      return refuse('extra-argument', {
        values: {
          value: words[1] ?? '',
          command: `neckfall ${command.name()}`,
          example: words.join(' '),
        },
      });
    }
    case 'commander.missingArgument':
      return refuse('missing-argument', {
        values: { command: `neckfall ${command.name()}`, example: `neckfall ${command.name()} station.csv` },
        expected: command.registeredArguments.map((argument) => `<${argument.name()}>`).join(' '),
      });
    case 'commander.help':
      return missingCommand(root, speaker);
    default:
      return error;
  }
}

/** No command among the words of a command line. */
export function missingCommand(root: Command, { any }: Speaker) {
  return refuse('missing-command', {
    expected: any(root.commands.map((command) => command.name())),
    values: { example: 'neckfall where Lyon' },
  });
}

/** An option without its value: the next word is an option itself, or there is none. Null where all have theirs. */
export function missingValue(root: Command, args: readonly string[]) {
  const command = root.commands.find((candidate) => candidate.name() === args[0]);
  for (let i = 1; command && i < args.length; i++) {
    const option = command.options.find(({ long, required }) => required && long === args[i]);
    if (!option) continue;
    const value = args[++i];
    if (value === undefined || value.startsWith('--')) {
      return refuse('missing-value', { field: args[i - 1], expected: /<.*>/.exec(option.flags)?.[0] ?? '' });
    }
  }
  return null;
}

/** The arguments of a command line that are neither the command, nor options, nor their values. */
function wordsOf(command: Command, args: readonly string[]): string[] {
  const words: string[] = [];
  for (let i = args.indexOf(command.name()) + 1; i < args.length; i++) {
    const option = command.options.find(({ long }) => long === args[i]);
    if (option) i += option.required ? 1 : 0;
    else if (!args[i].startsWith('-')) words.push(args[i]);
  }
  return words;
}
