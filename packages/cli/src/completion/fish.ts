import type { Completed, Completions } from './completions.ts';

/** A script for fish. */
export function fishScript({ program, commands }: Completions): string {
  const lines = commands.flatMap(({ name, words, options }) => {
    const when = name === '' ? '__fish_use_subcommand' : `__fish_seen_subcommand_from ${name}`;
    const start = `complete -c ${program} -n '${when}'`;
    const plain = words.map((word) => `${start} -a ${word}${said(describe(commands, word))}`);
    return [...plain, ...options.map((option) => `${start} ${argument(option)}`)];
  });
  return `# ${program} completion fish: source it, or keep it in ~/.config/fish/completions/${program}.fish
complete -c ${program} -f
${lines.join('\n')}
`;
}

function describe(commands: Completions['commands'], word: string): string {
  return commands.find(({ name }) => name === word)?.description ?? '';
}

function argument({ flag, description, takes }: Completed): string {
  const value =
    takes === 'nothing'
      ? ''
      : takes === 'anything'
        ? ' -x'
        : takes === 'file'
          ? ' -r -F'
          : ` -x -a '${takes.join(' ')}'`;
  return `-l ${flag.replace(/^--/, '')}${value}${said(description)}`;
}

function said(description: string): string {
  return description === '' ? '' : ` -d '${description.replace(/['\\]/g, '\\$&')}'`;
}
