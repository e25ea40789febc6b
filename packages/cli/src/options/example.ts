import type { Say } from '@neckfall/words';

/** The example at the foot of a command's help. */
export function example(say: Say, command: string): string {
  return `\n${say('help.example')}\n  neckfall ${command}`;
}
