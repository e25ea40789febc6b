import type { Completed, Completions } from './completions.ts';

/** A script for zsh. */
export function zshScript({ program, commands }: Completions): string {
  const described = (entries: readonly { word: string; says: string }[]) =>
    entries.map(({ word, says }) => quoted(says === '' ? word : `${word}:${says}`)).join(' ');
  const subs = commands.filter(({ name }) => name !== '');
  const listed = subs.map(({ name, description }) => ({ word: name, says: description }));
  const cases = commands.map(({ name, words, options }) =>
    name === ''
      ? `    *)
      local -a commands
      commands=(${described(listed)})
      (( CURRENT == 2 )) && _describe command commands
      _arguments ${options.map(argument).join(' ')} '*:: :' ;;`
      : `    ${name})
      shift words; (( CURRENT-- ))
      _arguments -S ${options.map(argument).join(' ')} ${quoted(words.length > 0 ? `1: :(${words.join(' ')})` : '1: :')} ;;`,
  );
  const [rest, ...named] = cases;
  return `#compdef ${program}
# ${program} completion zsh: source it after compinit, or keep it in a folder of $fpath as _${program}
_${program}() {
  case $words[2] in
${[...named, rest].join('\n')}
  esac
}
if [[ $zsh_eval_context[-1] == loadautofunc ]]; then _${program} "$@"; else compdef _${program} ${program}; fi
`;
}

/** An option in the notation of \`_arguments\`. */
function argument({ flag, description, takes }: Completed): string {
  const says = description.replace(/[[\]\\:]/g, '\\$&');
  const value =
    takes === 'nothing'
      ? ''
      : takes === 'anything'
        ? ': :'
        : takes === 'file'
          ? ': :_files'
          : `: :(${takes.join(' ')})`;
  return quoted(`${flag}${takes === 'nothing' ? '' : '='}${says === '' ? '' : `[${says}]`}${value}`);
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`;
}
