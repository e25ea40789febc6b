import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-completion-'));
afterAll(() => rmSync(folder, { recursive: true }));
writeFileSync(join(folder, 'garden plan.csv'), '');

const has = (shell: string) => spawnSync(shell, ['-c', 'exit 0']).status === 0;

function scriptFor(shell: string): string {
  const { code, stdout, stderr } = neckfall('completion', shell);
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  return stdout;
}

describe.skipIf(!has('bash'))('bash completes', () => {
  const script = scriptFor('bash');

  /** What bash offers for the last word of a command line. */
  function offered(...words: string[]): string[] {
    const line = words.map((word) => `'${word}'`).join(' ');
    const asked = `COMP_WORDS=(${line}); COMP_CWORD=${words.length - 1}; _neckfall; printf '%s\\n' "\${COMPREPLY[@]}"`;
    const { stdout, stderr, status } = spawnSync('bash', ['--norc', '-c', `${script}\n${asked}`], {
      encoding: 'utf8',
      cwd: folder,
    });
    expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
    return stdout.split('\n').filter((word) => word !== '');
  }

  test('commands', () => {
    expect(offered('neckfall', '')).toEqual(expect.arrayContaining(['where', 'season', 'when', '--about']));
    expect(offered('neckfall', 'wh')).toEqual(expect.arrayContaining(['where', 'when']));
    expect(offered('neckfall', 'sea')).toEqual(['season']);
  });

  test('options of the command that is given', () => {
    expect(offered('neckfall', 'season', 'Lyon', '--plant')).toEqual(['--plant-out', '--planting']);
    expect(offered('neckfall', 'when', '--plant-')).toEqual([]);
    expect(offered('neckfall', 'where', '--b')).toEqual(['--batch']);
  });

  test('words that an option takes', () => {
    expect(offered('neckfall', 'season', '--start', '')).toEqual([
      'direct-seed',
      'raised-seedlings',
      'bought-transplants',
      'sets',
    ]);
    expect(offered('neckfall', 'season', '--class', 'l')).toEqual(['long']);
    expect(offered('neckfall', 'season', '--cover=f').length).toBe(0);
    // bash takes --cover=f apart at the equals sign
    expect(offered('neckfall', 'season', '--cover', '=', 'f')).toEqual(['fleece']);
    expect(offered('neckfall', 'where', '--units', '=')).toEqual(['metric', 'us']);
    expect(offered('neckfall', 'season', '--date', '')).toEqual([]);
    expect(offered('neckfall', 'completion', 'z')).toEqual(['zsh']);
  });

  test('files', () => {
    expect(offered('neckfall', 'where', '--batch', 'gar')).toEqual(['garden plan.csv']);
  });
});

describe.skipIf(!has('zsh'))('zsh', () => {
  test('takes its script', () => {
    const check = `${scriptFor('zsh')}\nwhence -w _neckfall; print -r -- $_comps[neckfall]`;
    const load = `autoload -U compinit; compinit -D -u\n${check}`;
    const { stdout, stderr } = spawnSync('zsh', ['-f', '-c', load], { encoding: 'utf8' });
    expect({ stdout, stderr }).toEqual({ stdout: '_neckfall: function\n_neckfall\n', stderr: '' });
  });
});

describe.skipIf(!has('fish'))('fish completes', () => {
  const script = scriptFor('fish');
  function offered(line: string): string[] {
    const { stdout, stderr } = spawnSync('fish', ['--no-config', '-c', `${script}\ncomplete -C '${line}'`], {
      encoding: 'utf8',
      cwd: folder,
      env: { ...process.env, HOME: folder, XDG_CONFIG_HOME: folder, XDG_DATA_HOME: folder },
    });
    expect(stderr).toBe('');
    return stdout
      .split('\n')
      .map((entry) => entry.split('\t')[0])
      .filter((word) => word !== '');
  }

  test('commands, options, words and files', () => {
    expect(offered('neckfall sea')).toEqual(['season']);
    expect(offered('neckfall season --plant')).toEqual(['--planting', '--plant-out']);
    expect(offered('neckfall season --class l')).toEqual(['long']);
    expect(offered('neckfall where --batch gar')).toEqual(['garden plan.csv']);
  });
});

test.each([
  [['completion'], 'Which shell? Say `neckfall completion` and then bash, zsh or fish.\n'],
  [['completion', 'bish'], 'completion bish: expected bash, zsh or fish. Did you mean bash or fish?\n'],
])('neckfall %s is refused', (args, message) => {
  expect(neckfall(...args)).toEqual({ code: 2, stdout: '', stderr: message });
});
