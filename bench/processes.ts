import { spawnSync } from 'node:child_process';
import { median, type Row } from './timing.ts';

const commands: { name: string; args: string[]; limitS: number; limitMB: number }[] = [
  { name: 'where', args: ['where', 'Lyon'], limitS: 0.7, limitMB: 160 },
  { name: 'when', args: ['when', 'Lyon', '--class', 'long', '--start', 'sets'], limitS: 0.7, limitMB: 160 },
  {
    name: 'why',
    args: [
      'why',
      'Lyon',
      '--class',
      'long',
      '--start',
      'sets',
      '--date',
      '04-05',
      '--seen',
      'flowered,small',
    ],
    limitS: 1,
    limitMB: 160,
  },
  // the whole catalogue on two cores: bound by the days of 30 years of seasons at a dozen starts of each kind
  { name: 'which', args: ['which', 'Lyon'], limitS: 2, limitMB: 200 },
];

const runs = 9;

/**
 * Tells its own peak at exit. VmHWM where there is /proc: on Linux maxRSS takes over the size of the process that
 * started this one.
 */
const tellPeak = `import { readFileSync } from 'node:fs';
process.on('exit', () => {
  let kB = process.resourceUsage().maxRSS;
  try { kB = Number(/VmHWM:\\s*(\\d+)/.exec(readFileSync('/proc/self/status', 'utf8'))[1]); } catch {}
  process.stderr.write('peak=' + kB + '\\n');
});`;

/** Cold processes of the built command line: wall time and peak memory. */
export function processRows(program: string): Row[] {
  return commands.flatMap(({ name, args, limitS, limitMB }) => {
    const seconds = Array.from({ length: runs }, () => {
      const from = performance.now();
      run([program, ...args]);
      return (performance.now() - from) / 1000;
    });
    return [
      { what: `${name}, cold process`, value: median(seconds), unit: 's', limit: limitS },
      { what: `${name}, peak memory`, value: peakMB([program, ...args]), unit: 'MB', limit: limitMB },
    ];
  });
}

/** Peak memory of a process of Node, MB. */
export function peakMB(args: string[]): number {
  const told = run(['--import', `data:text/javascript,${encodeURIComponent(tellPeak)}`, ...args]);
  return Number(/peak=(\d+)/.exec(told)?.[1]) / 1024;
}

/** Runs Node to its end; the result is what it wrote to stderr. */
export function run(args: string[]): string {
  const { status, stderr, error } = spawnSync(process.execPath, args, {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  if (error) throw error;
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
  return stderr;
}
