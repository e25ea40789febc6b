import { spawn } from 'node:child_process';
import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recordedAnswer } from '../../data/test/live/recorded-answer.ts';
import { today as machineToday } from '../src/values/clock.ts';
import { program } from './run-neckfall.ts';

/** Not spawnSync: the service answers from this process. */
async function neckfall(args: string[], env: Record<string, string>) {
  const child = spawn(process.execPath, [program, ...args], {
    env: { ...process.env, NO_COLOR: '1', ...env },
  });
  const [stdout, stderr, code] = await Promise.all([
    text(child.stdout),
    text(child.stderr),
    new Promise<number | null>((resolve) => child.once('close', resolve)),
  ]);
  return { stdout, stderr, code };
}

describe('neckfall weather --ask', () => {
  let service: Server;
  let answer: RequestListener;
  let host: string;
  const asked: string[] = [];
  beforeAll(async () => {
    service = createServer((request, response) => {
      asked.push(request.url ?? '');
      answer(request, response);
    });
    await new Promise<void>((resolve) => service.listen(0, '127.0.0.1', resolve));
    host = `127.0.0.1:${(service.address() as AddressInfo).port}`;
  });
  afterAll(() => {
    service.close();
    service.closeAllConnections();
  });
  const run = (...args: string[]) =>
    neckfall(['weather', ...args], { NECKFALL_WEATHER_HOST: `http://${host}` });

  test('says whom it asks and for what, and prints what came', async () => {
    const recorded = recordedAnswer(machineToday());
    answer = (_, response) => response.end(JSON.stringify(recorded));
    const { code, stdout, stderr } = await run('--ask', '52.0837,-3.1291', '--json', '--days');
    expect(stderr).toBe(`Asking ${host} for the weather of 52.1, -3.1: the place to 0.1°, nothing else.\n`);
    expect(code).toBe(0);
    expect(asked).toHaveLength(1);
    expect(asked[0]).toContain('latitude=52.1&longitude=-3.1&');
    const { days, forecastFrom, calendarDays, files } = JSON.parse(stdout);
    expect([calendarDays, forecastFrom, files[0].file]).toEqual([108, recorded.daily.time[92], host]);
    expect(days.map(({ tempMaxC }: { tempMaxC: number }) => tempMaxC)).toEqual(
      recorded.daily.temperature_2m_max,
    );
  });

  test('what can’t be used is one line, and exit code 3', async () => {
    answer = (_, response) => response.writeHead(503).end();
    const { code, stdout, stderr } = await run('--ask', 'Talgarth');
    expect({ code, stdout }).toEqual({ code: 3, stdout: '' });
    expect(stderr.split('\n')[1]).toContain(
      `${host} answered with status 503: a fault of its own. Ask again later.`,
    );
    answer = (_, response) =>
      response.end(JSON.stringify({ ...recordedAnswer(machineToday()), latitude: 3 }));
    expect((await run('--ask', 'Talgarth')).stderr).toContain(
      'sent the weather of another place: 3, -3.1199951',
    );
  });

  test('asks nobody where it is not told to, or told two things', async () => {
    asked.length = 0;
    expect((await run()).code).toBe(2);
    expect((await run('--ask', 'Talgarth', 'station.csv')).stderr).toContain('Leave out --ask or the files');
    expect((await run('--ask', 'Nowhere at all')).code).toBe(2);
    const wide = await neckfall(['weather', '--ask', 'Talgarth'], {
      NECKFALL_WEATHER_HOST: 'http://weather.example',
    });
    expect(wide.stderr).toContain('NECKFALL_WEATHER_HOST=http://weather.example: expected the bare origin');
    expect(asked).toEqual([]);
  });
});
