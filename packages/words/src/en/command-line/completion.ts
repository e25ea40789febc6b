/** Completion in shells. */
export const completion = {
  'help.completion':
    'a script that lets your shell complete commands, options and their words; its first line says where it goes',
  'help.shell': 'bash, zsh or fish',
  'error.no-shell': 'Which shell? Say `neckfall completion` and then {expected}.',
} as const;
