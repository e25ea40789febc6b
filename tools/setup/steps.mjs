// Set-up shared by build, start and test. Plain Node without dependencies: it runs before any is installed.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

const oldestNode = [20, 19];

export function requireNode(version = process.versions.node) {
  const [major, minor] = version.split('.').map(Number);
  if (major > oldestNode[0] || (major === oldestNode[0] && minor >= oldestNode[1])) return;
  process.stderr.write(
    `Neckfall needs Node ${oldestNode.join('.')} or newer; this is ${version}. Install a current Node and run the command again.\n`,
  );
  process.exit(1);
}

/** Runs a command in the project's root with its output shown; returns the exit code. */
export function show(command, args, env = process.env) {
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env,
    shell: process.platform === 'win32',
  });
  if (error) process.stderr.write(`${command} did not start: ${error.message}\n`);
  return status ?? 1;
}

/** Installs the pinned packages unless they are newer than the lockfile. */
export function installIfNeeded() {
  const installed = join(root, 'node_modules', '.package-lock.json');
  const lockfile = join(root, 'package-lock.json');
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lockfile).mtimeMs) return;
  process.stderr.write('Installing packages (once)…\n');
  // stdout is kept for the answer
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    process.stderr.write('npm ci failed (see above). It needs the npm registry once; then run this again.\n');
    process.exit(1);
  }
}

/** Path of a program that an installed package brings. */
export function packageProgram(...path) {
  return join(root, 'node_modules', ...path);
}

export async function build() {
  const { bundle } = await import(pathToFileURL(join(root, 'tools', 'setup', 'bundle.mjs')).href);
  return bundle();
}
