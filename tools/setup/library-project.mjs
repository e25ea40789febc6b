import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { root } from './steps.mjs';

const run = promisify(execFile);
const packages = ['engine', 'data'];
/** What they need from the registry. */
const needed = ['pure-rand', 'fflate'];

const examplesFolder = join(root, 'docs', 'examples', 'library');
/** The worked examples of docs/library.md. */
export const exampleNames = readdirSync(examplesFolder).filter((name) => name.endsWith('.mjs'));

/**
 * An empty project in a folder of its own, into which engine and data were packed and installed as a reader would, with
 * the worked examples beside. Without a registry, what they need is taken from the workspace.
 */
export async function libraryProject() {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-library-'));
  const pack = async (name) => packed(folder, '--workspace', `packages/${name}`);
  const tarballs = await Promise.all(packages.map(pack));
  writeFileSync(
    join(folder, 'package.json'),
    JSON.stringify({ name: 'reader', private: true, type: 'module' }),
  );
  try {
    await install(folder, tarballs, '--prefer-offline', '--fetch-retries=0', '--fetch-timeout=10000');
  } catch {
    const own = await Promise.all(
      needed.map((name) => packed(folder, '--ignore-scripts', join(root, 'node_modules', name))),
    );
    await install(folder, [...own, ...tarballs], '--offline');
  }
  cpSync(examplesFolder, folder, { recursive: true });
  return { folder, tarballs: tarballs.map((name) => join(folder, name)) };
}

/** What a program prints in a project. */
export async function printed(folder, ...args) {
  const { stdout } = await run(process.execPath, args, { cwd: folder });
  return stdout;
}

async function packed(folder, ...args) {
  const { stdout } = await npm(root, 'pack', '--json', '--pack-destination', folder, ...args);
  // npm prints what the scripts say before it
  const told = JSON.parse(stdout.slice(stdout.search(/^[[{]/m)));
  const [{ filename }] = Object.values(told);
  return filename;
}

function install(folder, tarballs, ...options) {
  const files = tarballs.map((name) => `./${name}`);
  return npm(folder, 'install', '--no-audit', '--no-fund', '--ignore-scripts', ...options, ...files);
}

function npm(cwd, ...args) {
  // a test run names itself here, and so does npm where it runs this
  const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_|^NODE_/.test(name)));
  return run('npm', args, { cwd, env, shell: process.platform === 'win32', maxBuffer: 1 << 24 });
}
