import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recordedAnswer } from '../../packages/data/test/live/recorded-answer.ts';
import { buildApp } from '../../tools/setup/build-app.mjs';
import { whole } from './kept-garden.ts';
import { type App, axe, hasChromium, openApp, openDetails, ready, textOf } from './open-app.ts';
import { keepWeather } from './weather-files.ts';

const bank = '#/weather?at=52.0837,-3.1291&name=Pencarreg+Bank';
const msPerDay = 86_400_000;
/** The day here, as the page has it. */
const now = new Date();
const today = Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / msPerDay;

describe.skipIf(!hasChromium)('a copy that may ask a weather service', () => {
  let folder: string;
  let service: Server;
  let host: string;
  let app: App;
  let answer: RequestListener;
  const asked: string[] = [];

  beforeAll(async () => {
    service = createServer((request, response) => {
      asked.push(request.url ?? '');
      // a page may read what its service lets it
      response.setHeader('Access-Control-Allow-Origin', '*');
      answer(request, response);
    });
    await new Promise<void>((resolve) => service.listen(0, '127.0.0.1', resolve));
    host = `127.0.0.1:${(service.address() as AddressInfo).port}`;
    folder = mkdtempSync(join(tmpdir(), 'neckfall-asks-'));
    process.env.NECKFALL_WEATHER_HOST = `http://${host}`;
    try {
      await buildApp(folder);
    } finally {
      delete process.env.NECKFALL_WEATHER_HOST;
    }
    app = await openApp(folder, `http://${host}`);
  });
  afterAll(async () => {
    await app?.close();
    service.close();
    service.closeAllConnections();
    rmSync(folder, { recursive: true, force: true });
  });

  const json =
    (document: object): RequestListener =>
    (_, response) =>
      response.setHeader('Content-Type', 'application/json').end(JSON.stringify(document));
  const press = (page: Page) =>
    page.getByRole('button', { name: 'Ask for the last three months and the forecast' }).click();

  test('asks nothing before the press, then sends the place to 0.1° and keeps days and forecast', async () => {
    answer = json(recordedAnswer(today));
    asked.length = 0;
    const page = await app.page(bank, { context: await app.context() });
    expect(await textOf(page)).toContain(
      `Sent to ${host}, when you press the button and at no other time: the place rounded to 0.1° (52.1, -3.1), nothing else.`,
    );
    expect(await axe(page)).toEqual([]);
    expect(asked).toEqual([]);
    await press(page);
    await page.locator('.found').waitFor();
    expect(asked).toHaveLength(1);
    expect(asked[0]).toContain('latitude=52.1&longitude=-3.1&');
    await keepWeather(page);
    const [kept] = ((await whole(page)) as unknown as { weather: Record<string, unknown[] & string>[] })
      .weather;
    const { daily } = recordedAnswer(today);
    expect(kept.forecastFrom).toBe(daily.time[92]);
    expect(kept.tempMaxC).toEqual(daily.temperature_2m_max);
    expect(kept.solarMJ).toEqual(daily.shortwave_radiation_sum);
    expect(await textOf(page)).toContain('it is a forecast, until a later answer or file takes its place.');
    // what is still to come counts as no day measured
    await openDetails(page);
    const counts = await page.locator('[aria-labelledby=weather-months] td:nth-of-type(1)').allTextContents();
    expect(counts.reduce((sum, count) => sum + Number(count), 0)).toBe(92);

    // a later answer takes the place of what was forecast, without a question
    const later = recordedAnswer(today);
    later.daily.temperature_2m_max = later.daily.temperature_2m_max.map((tempC, at) =>
      at < 92 ? tempC : tempC + 3,
    );
    answer = json(later);
    await press(page);
    await page.locator('.found').waitFor();
    expect(await page.getByText('Which shall stand?').count()).toBe(0);
    await keepWeather(page);
    const [again] = ((await whole(page)) as unknown as { weather: { tempMaxC: number[] }[] }).weather;
    expect(again.tempMaxC).toEqual(later.daily.temperature_2m_max);
    await page.context().close();
    app.expectClean();
  });

  const refusals: { name: string; says: string; answers: RequestListener }[] = [
    {
      name: '429',
      says: 'has been asked too often (status 429)',
      answers: (_, response) => response.writeHead(429).end(),
    },
    {
      name: '500',
      says: 'has a fault of its own (status 500)',
      answers: (_, response) => response.writeHead(500).end(),
    },
    {
      name: 'HTML',
      says: 'is no weather that can be read',
      answers: (_, response) => response.end('<p>Sorry</p>'),
    },
    {
      name: 'half a document',
      says: 'is no weather that can be read',
      answers: (_, response) => response.end(JSON.stringify(recordedAnswer(today)).slice(0, 2000)),
    },
    {
      name: 'another place',
      says: 'sent the weather of another place (-33.9, 151.2)',
      answers: json({ ...recordedAnswer(today), latitude: -33.9, longitude: 151.2 }),
    },
    {
      name: 'other days',
      says: 'sent other days than those asked for',
      answers: json(recordedAnswer(today - 30)),
    },
    {
      name: 'a redirect elsewhere',
      says: 'sent us on to another address',
      answers: (_, response) => response.writeHead(302, { Location: 'http://127.0.0.1:9/' }).end(),
    },
    {
      name: 'far too much',
      says: 'sent more than 2 MB',
      answers: (_, response) => response.end(' '.repeat(3_000_000)),
    },
    {
      name: 'a line that breaks',
      says: 'could not be reached',
      answers: (_, response) => {
        response.writeHead(200, { 'Content-Length': 400 });
        response.write('{"latitude":', () => response.destroy());
      },
    },
  ];

  test.each(refusals)('$name gives one line and keeps nothing', async ({ says, answers }) => {
    answer = answers;
    const page = await app.at(bank);
    await press(page);
    const told = page.locator('main [role=alert]');
    await told.waitFor();
    expect(await told.textContent()).toContain(`${host} ${says}`.replace(/^.* (is no weather)/, '$1'));
    expect(await told.textContent()).toContain('Nothing here was changed.');
    expect(await textOf(page)).toContain('no weather is kept yet');
    expect(await page.locator('.found').count()).toBe(0);
  });

  test('one need not wait for a service that does not answer', async () => {
    answer = () => {};
    const page = await app.at(bank);
    await press(page);
    await page.getByText(`Waiting for ${host}…`).waitFor();
    await page.getByRole('button', { name: 'Stop waiting' }).click();
    await page.getByRole('button', { name: /^Ask for/ }).waitFor();
    await ready(page);
    expect(await page.locator('main [role=alert]').count()).toBe(0);
    expect(await page.locator('.found').count()).toBe(0);
  });

  test('the policy of its pages names that one host more, and no other', async () => {
    const policy = (await fetch(app.url)).headers.get('content-security-policy') ?? '';
    expect(policy).toContain(`connect-src 'self' http://${host};`);
    const page = await app.at(bank);
    const meta = await page.locator('meta[http-equiv=Content-Security-Policy]').getAttribute('content');
    expect(policy).toBe(`${meta}; frame-ancestors 'none'`);
  });
});
