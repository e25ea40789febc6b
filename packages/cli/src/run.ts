import { speaker, type Units } from '@neckfall/words';
import type { CommanderError } from 'commander';
import { about } from './commands/about.ts';
import { print } from './output/print.ts';
import { program } from './program.ts';
import { type Refusal, refusalOf, refuse } from './refusal.ts';
import { refusalLine } from './refusal-line.ts';
import { usageRefusal } from './usage-refusal.ts';

/** Runs one command line; the result is the exit code. */
export async function run(args: readonly string[]): Promise<number> {
  process.once('SIGINT', () => process.exit(130));
  // a reader that closes stderr must not end us with a stack trace
  process.stderr.on('error', () => {});
  const voice = speaker(unitsOf(args));
  const root = program(voice.say);
  let helpText = '';
  const hold = (text: string) => {
    helpText += text;
  };
  for (const command of [root, ...root.commands])
    command.configureOutput({ writeOut: hold, writeErr: () => {} });
  try {
    if (args[0] === '--about') await print(about(voice));
    else if (args.length === 0)
      throw noCommand(
        root.commands.map((command) => command.name()),
        voice.any,
      );
    else await root.parseAsync(args, { from: 'user' });
    return 0;
  } catch (error) {
    if (isCommanderError(error) && error.exitCode === 0) return printHelp(helpText);
    const problem = isCommanderError(error) ? usageRefusal(error, root, args, voice) : error;
    return report(problem, args.includes('--debug'));
  }

  function report(error: unknown, debug: boolean): number {
    const refusal = refusalOf(error) ?? ownFault(error);
    process.stderr.write(`${refusalLine(refusal, voice)}\n`);
    if (debug && error instanceof Error) {
      const cause = error.cause instanceof Error ? `\n${error.cause.stack}` : '';
      process.stderr.write(`${error.stack}${cause}\n`);
    }
    return refusal.exit;
  }

  async function printHelp(text: string): Promise<number> {
    try {
      await print(text);
      return 0;
    } catch (error) {
      return report(error, args.includes('--debug'));
    }
  }
}

/** The language of refusals is chosen before the options are read. */
function unitsOf(args: readonly string[]): Units {
  const flag = args.indexOf('--units');
  return args[flag + 1] === 'us' && flag >= 0 ? 'us' : args.includes('--units=us') ? 'us' : 'metric';
}

function isCommanderError(error: unknown): error is CommanderError {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('commander.');
}

function noCommand(commands: readonly string[], any: (items: readonly string[]) => string) {
  return refuse('missing-command', { expected: any(commands), values: { example: 'neckfall where Lyon' } });
}

function ownFault(error: unknown): Refusal {
  const reason = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return { code: 'internal', exit: 1, field: null, values: { reason }, expected: null, nearest: [] };
}
