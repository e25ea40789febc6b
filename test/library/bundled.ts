import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import * as esbuild from 'esbuild';
import { chromium } from 'playwright-core';
import { findChromium } from '../../tools/setup/chromium.mjs';
import { serve } from '../../tools/setup/serve-app.mjs';

type Season = { good: number; neckFall: { p10: number; p50: number; p90: number } | null };

const program = `
import { siteAt } from '@neckfall/data';
import { fetchSiteAssets } from '@neckfall/data/browser';
import { parseDay, planDefaults, runPlan } from '@neckfall/engine';

export async function season(folder) {
  const assets = await fetchSiteAssets(new URL(folder));
  const site = siteAt(assets, { latitudeDeg: 52.1, longitudeDeg: 5.2 });
  const plan = { ...planDefaults, type: 'northern-long', start: 'sets', startDay: parseDay('2027-03-25') };
  const { seasonShares, neckFall } = runPlan(site, plan);
  return { good: seasonShares.good, neckFall: neckFall.days };
}
`;

/** Bundles a program for browsers in a project, and runs it under Node and, where there is one, in Chromium. */
export async function bundledReader(folder: string) {
  writeFileSync(join(folder, 'reader.mjs'), program);
  const site = join(folder, 'site');
  mkdirSync(site);
  const { metafile } = await esbuild.build({
    absWorkingDir: folder,
    entryPoints: ['reader.mjs'],
    outfile: join(site, 'bundle.js'),
    bundle: true,
    minify: true,
    metafile: true,
    platform: 'browser',
    format: 'esm',
    logLevel: 'silent',
  });
  const inputs = Object.values(metafile.inputs);
  const imported = inputs.flatMap(({ imports }) => imports.map(({ path }) => path));
  cpSync(join(folder, 'node_modules', '@neckfall', 'data', 'assets'), join(site, 'assets'), {
    recursive: true,
  });
  writeFileSync(join(site, 'index.html'), '<!doctype html><title>reader</title>');
  const { server, url } = await serve(site);
  try {
    const own = await import(pathToFileURL(join(site, 'bundle.js')).href);
    const assets = new URL('assets/', url).href;
    const seasons: { where: string; season: Season }[] = [
      { where: 'node', season: await own.season(assets) },
    ];
    const executablePath = findChromium();
    if (executablePath) seasons.push({ where: 'chromium', season: await inChromium(executablePath, url) });
    return {
      builtins: imported.filter((path) => path.startsWith('node:') || builtinModules.includes(path)),
      /** Of what went in, all that is not of the installed packages. */
      others: Object.keys(metafile.inputs).filter((path) => !path.startsWith('node_modules/')),
      seasons,
    };
  } finally {
    server.close();
  }
}

async function inChromium(executablePath: string, url: string): Promise<Season> {
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const page = await browser.newPage();
    await page.goto(url);
    return await page.evaluate(async () => {
      const base = location.href;
      const { season } = await import(new URL('bundle.js', base).href);
      return season(new URL('assets/', base).href);
    });
  } finally {
    await browser.close();
  }
}
