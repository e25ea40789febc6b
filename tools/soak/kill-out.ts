import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as after } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import type { Round } from './worker.ts';

const program = fileURLToPath(new URL('../../packages/cli/bin/neckfall.mjs', import.meta.url));
const before = 'what stood here before\n';
const rows = `id,latitude,longitude,class,start,date\n${Array.from({ length: 40 }, (_, row) => `${row},${45 + row / 40},4.8,long,sets,03-25\n`).join('')}`;

/** Kills the command line while it writes to --out: the file is what it was or what it should become, to the byte. */
export async function killOut(kills: number, random: () => number): Promise<Round> {
  const name = 'command line killed while it writes --out, an answer or a batch';
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-kills-'));
  const failures: string[] = [];
  let written = 0;
  try {
    const table = join(folder, 'rows.csv');
    writeFileSync(table, rows);
    const lines = [
      [
        'season',
        '--at',
        '45.76,4.84',
        '--class',
        'long',
        '--start',
        'sets',
        '--date',
        '03-25',
        '--today',
        '2027-01-05',
      ],
      ['season', '--batch', table, '--today', '2027-01-05'],
    ];
    for (const [at, line] of lines.entries()) {
      const target = join(folder, `answer-${at}`);
      const args = [program, ...line, '--out', target];
      const begun = performance.now();
      if (spawnSync(process.execPath, args).status !== 0) throw new Error(`${args.join(' ')} fails unkilled`);
      const wholeMs = performance.now() - begun;
      const after = readFileSync(target, 'utf8');
      for (let kill = 0; kill < kills / lines.length; kill++) {
        writeFileSync(target, before);
        await killedAfter(args, random() * wholeMs * 1.1);
        const found = readFileSync(target, 'utf8');
        if (found === after) written++;
        else if (found !== before) failures.push(`half a file: ${found.slice(0, 200)}`);
      }
      // what the killed left is no hindrance, and is cleared away
      if (spawnSync(process.execPath, args).status !== 0) failures.push('the run after the kills fails');
    }
    const left = readdirSync(folder).filter((file) => !/^(answer-\d|rows\.csv)$/.test(file));
    if (left.length > 0) failures.push(`left over: ${left.join(', ')}`);
    if (written === 0) failures.push('no kill came after the file was written: the moments are badly chosen');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return { name, cases: kills, failures, slowestMs: null };
}

/** A garden as the app saves it, with a thousand things seen: its writing takes a while. */
const garden = `${JSON.stringify(
  {
    schema: 'neckfall/garden@1',
    plantings: [{ id: 'first', name: 'The long bed' }],
    observations: Array.from({ length: 1000 }, (_, at) => ({
      id: `o${at}`,
      plantingId: 'first',
      date: '2027-05-20',
      leavesGreen: 5,
    })),
  },
  null,
  2,
)}\n`;

/** Kills the command line while it notes what was seen: the garden file is the old one or the new one, whole. */
export async function killRecord(kills: number, random: () => number): Promise<Round> {
  const name = 'command line killed while it records into a garden file';
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-kills-'));
  const failures: string[] = [];
  let written = 0;
  try {
    const target = join(folder, 'bank.neckfall.json');
    const args = [program, 'record', target, '--planting', 'first', '--leaves', '6', '--date', '2027-06-20'];
    writeFileSync(target, garden);
    const begun = performance.now();
    if (spawnSync(process.execPath, args).status !== 0) throw new Error(`${args.join(' ')} fails unkilled`);
    const wholeMs = performance.now() - begun;
    // every id is another, all else is the same to the byte
    const alike = (text: string) => text.replace(/"id": "[a-z2-9]{10}"/, '"id": ""');
    const after = alike(readFileSync(target, 'utf8'));
    for (let kill = 0; kill < kills; kill++) {
      writeFileSync(target, garden);
      // most of the time goes into starting: the file is touched at the end
      await killedAfter(args, wholeMs * (0.5 + 0.6 * random()));
      const found = readFileSync(target, 'utf8');
      if (alike(found) === after) written++;
      else if (found !== garden) failures.push(`half a file: ${found.slice(-200)}`);
    }
    if (spawnSync(process.execPath, args).status !== 0) failures.push('the run after the kills fails');
    const left = readdirSync(folder).filter((file) => file !== 'bank.neckfall.json');
    if (left.length > 0) failures.push(`left over: ${left.join(', ')}`);
    if (written === 0 || written === kills)
      failures.push(`${written} of ${kills} were written: badly chosen`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return { name, cases: kills, failures, slowestMs: null };
}

async function killedAfter(args: readonly string[], ms: number): Promise<void> {
  const child = spawn(process.execPath, args, { stdio: 'ignore' });
  const end = new Promise((resolve) => child.on('exit', resolve));
  await Promise.race([end, after(ms)]);
  child.kill('SIGKILL');
  await end;
}
