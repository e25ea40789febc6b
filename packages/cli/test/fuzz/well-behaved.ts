import type { Captured } from './captured.ts';

/** Controls but our own line breaks (tables end lines in CRLF), and marks that turn or hide text. */
const unseen = /(?!\r?\n)[\p{Cc}\p{Zl}\p{Zp}\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/u;

/** What is wrong with the way a command line was answered; null where nothing is. */
export function misbehaviour({ code, stdout, stderr }: Captured, args: readonly string[]): string | null {
  if (code !== 0 && code !== 2 && code !== 3) return `exit code ${code}: ${stderr}`;
  if (/^\s+at /m.test(stderr) && !args.includes('--debug')) return `a stack trace: ${stderr}`;
  const steering = unseen.exec(stdout) ?? unseen.exec(stderr);
  if (steering) return `sent and not shown: ${JSON.stringify(steering.input)}`;
  if (code === 0) {
    if (stdout === '' && !args.some((arg) => arg.startsWith('--out'))) return 'an answer without words';
    return /\b(NaN|undefined|Infinity|\[object)\b/.test(withoutEchoes(stdout, args))
      ? `nonsense in ${stdout}`
      : null;
  }
  // a batch of which every row failed has said so row by row
  const isBatch = code === 3 && args.some((arg) => arg.startsWith('--batch'));
  if (stdout !== '' && !isBatch) return `both an answer and a refusal: ${stdout}`;
  const lines = stderr.split('\n');
  if (!args.includes('--debug') && (lines.length !== 2 || lines[1] !== '')) return `not one line: ${stderr}`;
  return lines[0].trim() === '' ? 'a refusal without words' : null;
}

/** An answer may repeat what it was given. */
function withoutEchoes(text: string, args: readonly string[]): string {
  return args.reduce((rest, arg) => (arg.length > 2 ? rest.replaceAll(arg, '') : rest), text);
}
