import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { show } from './steps.mjs';

// the headless shell is the same engine without windows, which takes a fifth less time
const names = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
];
const fixed = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** Path of a Chromium for the browser tests, installed where the system lets us; null where there is none. */
export function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (isProgram(named)) return named;
    process.stderr.write(`CHROMIUM_PATH names ${named}, which is no program; looking elsewhere.\n`);
  }
  const found = search();
  if (found) return found;
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    process.stderr.write('Installing Chromium for the browser tests (once)…\n');
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    if (show('apt-get', ['-q', 'update'], env) !== 0) return null;
    // the second for systems that have no such package as the first
    for (const wanted of ['chromium-headless-shell', 'chromium']) {
      if (show('apt-get', ['-qy', '--no-install-recommends', 'install', wanted], env) === 0) return search();
    }
  }
  return null;
}

function search() {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  const candidates = [...folders.flatMap((folder) => names.map((name) => join(folder, name))), ...fixed];
  return candidates.find(isProgram) ?? null;
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
