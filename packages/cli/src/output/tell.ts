import { shown } from '@neckfall/words';

/** Says something on stderr, a line. */
export function tell(line: string): void {
  process.stderr.write(`${shown(line)}\n`);
}
