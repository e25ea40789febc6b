import { spawnSync } from 'node:child_process';
import { root } from './steps.mjs';

const block = /```console\n\$ ([^\n]*)\n([\s\S]*?)```/g;

/** The commands shown in a text with the output shown below each. */
export function examplesIn(text) {
  return [...text.matchAll(block)].map(([, command, output]) => ({ command, output }));
}

/** The text with the output of each command as it is now. */
export function refreshed(text) {
  return text.replace(block, (_, command) => `\`\`\`console\n$ ${command}\n${outputOf(command)}\`\`\``);
}

/** What a `node …` command line prints, run from the project's root. */
export function outputOf(command) {
  const [program, ...args] = command.match(/"[^"]*"|\S+/g).map((word) => word.replaceAll('"', ''));
  if (program !== 'node') throw new Error(`${command}: examples begin with node`);
  const { status, stdout, stderr } = spawnSync(process.execPath, args, {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C.UTF-8' },
  });
  if (status !== 0) throw new Error(`${command}: exit code ${status}: ${stderr}`);
  return stdout;
}
