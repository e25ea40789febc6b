import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runInThisContext } from 'node:vm';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { expect, test } from 'vitest';
import { dayNumber } from '../../packages/engine/src/index.ts';
import type { PlainCase, SeasonNumbers, seasonNumbers } from './chromium-seasons.ts';
import { climateOf } from './places.ts';

const chromiumPath = process.env.CHROMIUM_PATH ?? '/usr/bin/chromium';
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Node and a browser may differ in the last bits of sin, exp and log; nothing may grow them to this. */
const mostApart = 1e-6;

/** What the bundle puts on the global object. */
type Bundle = { seasonNumbers: typeof seasonNumbers };

const day = (month: number, dayOfMonth: number) => dayNumber(2027, month, dayOfMonth);

const cases: PlainCase[] = [
  plain(52.23, 21.01, { type: 'northern-long', start: 'direct-seed', startDay: day(4, 5) }),
  plain(51.51, -0.13, { type: 'northern-long', start: 'sets', startDay: day(3, 20), setStore: 'warm' }),
  plain(57.15, -2.11, {
    type: 'early-long',
    start: 'raised-seedlings',
    startDay: day(2, 1),
    cover: 'fleece',
  }),
  plain(45.76, 4.84, {
    type: 'early-long',
    start: 'bought-transplants',
    startDay: day(3, 20),
    water: 'rain',
  }),
  plain(44.98, -93.27, { type: 'intermediate', start: 'direct-seed', startDay: day(8, 20) }),
  plain(38.58, -121.49, {
    type: 'intermediate',
    start: 'raised-seedlings',
    startDay: day(10, 20),
    soil: 'clay',
  }),
  plain(35.69, 139.69, { type: 'short', start: 'raised-seedlings', startDay: day(9, 20), cover: 'tunnel' }),
  plain(29.76, -95.37, { type: 'short', start: 'direct-seed', startDay: day(10, 10), densityPerM2: 90 }),
  plain(20, 73.78, { type: 'tropical-short', start: 'raised-seedlings', startDay: day(9, 20) }),
  plain(1.35, 103.82, { type: 'early-long', start: 'sets', startDay: day(1, 8) }),
  plain(-37.81, 144.96, { type: 'intermediate', start: 'direct-seed', startDay: day(7, 10), sunHours: 8 }),
  plain(-27.41, -49.6, { type: 'short', start: 'raised-seedlings', startDay: day(4, 20), lampHours: 14 }),
];

function plain(latitudeDeg: number, longitudeDeg: number, plan: PlainCase['plan']): PlainCase {
  const climate = climateOf(latitudeDeg, longitudeDeg);
  const months = Object.fromEntries(
    Object.entries(climate).flatMap(([name, value]) =>
      value instanceof Float64Array ? [[name, Array.from(value)]] : [],
    ),
  );
  return { latitudeDeg, longitudeDeg, elevationM: climate.elevationM, months, plan };
}

test.skipIf(!existsSync(chromiumPath))(
  'Node and Chromium agree to 1e-6 on every continuous output of twelve seasons',
  async () => {
    const bundle = await build({
      entryPoints: [fileURLToPath(new URL('./chromium-entry.ts', import.meta.url))],
      bundle: true,
      format: 'iife',
      platform: 'browser',
      write: false,
      logLevel: 'error',
    });
    const script = bundle.outputFiles[0].text;
    const browser = await chromium.launch({ executablePath: chromiumPath, args: flags });
    try {
      const page = await browser.newPage();
      await page.addScriptTag({ content: script });
      const inBrowser = await page.evaluate(
        (sent) => sent.map((one) => (globalThis as unknown as Bundle).seasonNumbers(one)),
        cases,
      );
      // the same bundle, so that only the engines underneath differ
      runInThisContext(script);
      const inNode = cases.map((one) => (globalThis as unknown as Bundle).seasonNumbers(one));
      // the crops must reach the outputs that are compared
      expect(inNode.filter((numbers) => numbers['mean fellOn'] > 0).length).toBeGreaterThanOrEqual(6);
      expect(inNode.filter((numbers) => numbers['generated fellOn'] > 0).length).toBeGreaterThanOrEqual(6);
      expect(apart(inNode, inBrowser)).toEqual([]);
    } finally {
      await browser.close();
    }
  },
);

/** Every output on which two runs differ by more than {@link mostApart}, relative to its size. */
/** Of days, grams and shares less than this is none. */
const nothing = 1e-8;

function apart(a: SeasonNumbers[], b: SeasonNumbers[]): string[] {
  return a.flatMap((numbers, i) =>
    Object.entries(numbers).flatMap(([name, value]) => {
      const other = b[i][name];
      const off = Math.abs(value - other) / Math.max(Math.abs(value), Math.abs(other), nothing);
      return value === other || off <= mostApart ? [] : [`case ${i + 1}, ${name}: ${value} and ${other}`];
    }),
  );
}
