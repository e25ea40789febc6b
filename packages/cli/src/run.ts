import { loadLater, type Speaker } from '@neckfall/words';
import { type Command, CommanderError } from 'commander';
import { about } from './commands/about.ts';
import { firstSpeaker } from './options/speaker-for.ts';
import { print } from './output/print.ts';
import { tell } from './output/tell.ts';
import { program } from './program.ts';
import { ownFault } from './refusal/own-fault.ts';
import { refusalOf } from './refusal/refusal.ts';
import { refusalLine } from './refusal/refusal-line.ts';
import { missingCommand, missingValue, usageRefusal } from './refusal/usage-refusal.ts';

/** Runs one command line; the result is the exit code. */
export async function run(args: readonly string[]): Promise<number> {
  // of the words none are fetched here: they lie in the bundle
  await loadLater();
  const voice = await firstSpeaker(args);
  try {
    await answer(program(voice), args, voice);
    return 0;
  } catch (error) {
    const refusal = refusalOf(error) ?? ownFault(error);
    tell(refusalLine(refusal, voice));
    if (args.includes('--debug')) for (const line of stackOf(error).split('\n')) tell(line);
    return refusal.exit;
  }
}

async function answer(root: Command, args: readonly string[], voice: Speaker): Promise<void> {
  if (args[0] === '--about') return print(about(voice));
  if (args.length === 0) throw missingCommand(root, voice);
  const valueless = missingValue(root, args);
  if (valueless) throw valueless;
  let helpText = '';
  for (const command of [root, ...root.commands]) {
    command.configureOutput({ writeOut: (text) => (helpText += text), writeErr: () => {} });
  }
  try {
    await root.parseAsync(args, { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode !== 0) throw usageRefusal(error, root, args, voice);
    await print(helpText);
  }
}

function stackOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return error.cause === undefined ? String(error.stack) : `${error.stack}\n${stackOf(error.cause)}`;
}
