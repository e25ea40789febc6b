import type { Speaker } from '@neckfall/words';
import type { Command } from 'commander';
import { example } from '../options/example.ts';
import { print } from '../output/print.ts';
import { refuse } from '../refusal/refusal.ts';
import { parseChoice } from '../values/choice.ts';
import { bashScript } from './bash.ts';
import { type Completions, completionsOf, type Shell, shells } from './completions.ts';
import { fishScript } from './fish.ts';
import { zshScript } from './zsh.ts';

const scripts: Record<Shell, (completions: Completions) => string> = {
  bash: bashScript,
  zsh: zshScript,
  fish: fishScript,
};

/** `neckfall completion SHELL`: prints the script that makes the shell complete commands, options and their words. */
export function addCompletion(root: Command, voice: Speaker): void {
  const { say } = voice;
  root
    .command('completion')
    .description(say('help.completion'))
    .argument('[shell]', say('help.shell'))
    .addHelpText('after', example(say, 'completion bash'))
    .action((shell: string | undefined) => {
      if (shell === undefined) throw refuse('no-shell', { expected: voice.any(shells) });
      return print(scripts[parseChoice(shell, 'completion', shells, voice)](completionsOf(root)));
    });
}
