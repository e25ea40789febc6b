import type { Completed, Completions } from './completions.ts';

/** A script for bash; it works with the bash of 2007 (3.2) that some systems still have. */
export function bashScript({ program, commands }: Completions): string {
  const sub = commands.filter(({ name }) => name !== '').map(({ name }) => name);
  const options = commands.flatMap((command) => command.options);
  return `# ${program} completion bash: source it, or keep it where bash looks for completions
_${program}() {
  local cur=\${COMP_WORDS[COMP_CWORD]} prev=\${COMP_WORDS[COMP_CWORD-1]} command='' words='' i
  # --option=word comes apart at its equals sign
  if [[ $cur == = ]]; then cur=''; elif [[ $prev == = ]]; then prev=\${COMP_WORDS[COMP_CWORD-2]}; fi
  for ((i = 1; i < COMP_CWORD; i++)); do
    case \${COMP_WORDS[i]} in ${sub.join('|')}) command=\${COMP_WORDS[i]}; break ;; esac
  done
  COMPREPLY=()
  case $prev in
${takes(options)}
  esac
  case $command in
${commands.map(({ name, words, options: own }) => `    ${name || "''"}) words='${[...words, ...own.map(({ flag }) => flag)].join(' ')}' ;;`).join('\n')}
  esac
  COMPREPLY=($(compgen -W "$words" -- "$cur"))
}
complete -F _${program} ${program}
`;
}

/** What comes after an option, told once for all the options that take the same. */
function takes(options: readonly Completed[]): string {
  const flagsBy = new Map<string, Set<string>>();
  for (const { flag, takes } of options) {
    if (takes === 'nothing') continue;
    const reply =
      takes === 'anything'
        ? 'return'
        : takes === 'file'
          ? 'local IFS=$\'\\n\'; compopt -o filenames 2>/dev/null; COMPREPLY=($(compgen -f -- "$cur")); return'
          : `COMPREPLY=($(compgen -W '${takes.join(' ')}' -- "$cur")); return`;
    flagsBy.set(reply, (flagsBy.get(reply) ?? new Set()).add(flag));
  }
  return [...flagsBy].map(([reply, flags]) => `    ${[...flags].join('|')}) ${reply} ;;`).join('\n');
}
