import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, describe, expect, test } from 'vitest';
import { askWeather } from '../../src/index.ts';

const point = { latitudeDeg: 52.0837, longitudeDeg: -3.1291 };
const servers: Server[] = [];

/** A service of this machine that answers so; tells what it was asked. */
async function service(answer: RequestListener): Promise<{ host: string; asked: string[] }> {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    asked.push(request.url ?? '');
    answer(request, response);
  });
  servers.push(server);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { host: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, asked };
}

afterEach(() => {
  for (const server of servers.splice(0)) {
    server.close();
    server.closeAllConnections();
  }
});

const ask = (host: string, more: { signal?: AbortSignal; timeoutMs?: number } = {}) =>
  askWeather({ host, point, fetch, ...more });

describe('asking a weather service', () => {
  test('sends the place to a tenth of a degree, what is wanted, and nothing else', async () => {
    const heads: string[][] = [];
    const { host, asked } = await service((request, response) => {
      heads.push(Object.keys(request.headers));
      response.end('{}');
    });
    expect(await ask(host)).toEqual({ ok: true, text: '{}' });
    expect(asked).toHaveLength(1);
    const { pathname, searchParams } = new URL(asked[0], host);
    expect(pathname).toBe('/v1/forecast');
    expect(Object.fromEntries(searchParams)).toEqual({
      latitude: '52.1',
      longitude: '-3.1',
      daily: 'temperature_2m_max,temperature_2m_min,precipitation_sum,shortwave_radiation_sum',
      past_days: '92',
      forecast_days: '16',
      timezone: 'auto',
    });
    expect(heads[0]).not.toContain('cookie');
    expect(heads[0]).not.toContain('referer');
  });

  test.each([400, 404, 429, 500, 503])('is told the status %i as it is', async (status) => {
    const { host } = await service((_, response) => response.writeHead(status).end('{"error":true}'));
    expect(await ask(host)).toEqual({ ok: false, refusal: { code: 'status', status } });
  });

  test('follows nobody elsewhere', async () => {
    const elsewhere = await service((_, response) => response.end('{}'));
    const { host } = await service((_, response) =>
      response.writeHead(302, { Location: `${elsewhere.host}/v1/forecast` }).end(),
    );
    expect(await ask(host)).toEqual({ ok: false, refusal: { code: 'redirected' } });
    expect(elsewhere.asked).toEqual([]);
  });

  test('reads no more than 2 MB, said beforehand or not', async () => {
    const refusal = { code: 'too-big', limitMb: 2 };
    const said = await service((_, response) => {
      response.writeHead(200, { 'Content-Length': 50_000_000 });
      response.write('[');
    });
    expect(await ask(said.host)).toEqual({ ok: false, refusal });
    let written = 0;
    const unsaid = await service((_, response) => {
      const more = () => {
        if (response.destroyed) return;
        written += 1;
        response.write(' '.repeat(100_000), more);
      };
      more();
    });
    expect(await ask(unsaid.host)).toEqual({ ok: false, refusal });
    // what was on its way comes on top
    expect(written).toBeLessThan(300);
  });

  test('gives a slow one up, before its head and in its body', async () => {
    const refusal = { code: 'slow', seconds: 1 };
    const dumb = await service(() => {});
    expect(await ask(dumb.host, { timeoutMs: 60 })).toEqual({ ok: false, refusal });
    const halting = await service((_, response) => {
      response.write('{"latitude":');
    });
    expect(await ask(halting.host, { timeoutMs: 60 })).toEqual({ ok: false, refusal });
  });

  test('can be called off, before and while it waits', async () => {
    const refusal = { code: 'cancelled' };
    const calledOff = new AbortController();
    const { host, asked } = await service(() => calledOff.abort());
    expect(await ask(host, { signal: calledOff.signal })).toEqual({ ok: false, refusal });
    expect(await ask(host, { signal: calledOff.signal })).toEqual({ ok: false, refusal });
    expect(asked).toHaveLength(1);
  });

  test('a broken line, or nobody there, is one thing', async () => {
    const refusal = { code: 'unreachable' };
    const { host } = await service((_, response) => {
      response.writeHead(200, { 'Content-Length': 400 });
      response.write('{"latitude":');
      setImmediate(() => response.destroy());
    });
    expect(await ask(host)).toEqual({ ok: false, refusal });
    const gone = await service(() => {});
    await new Promise((resolve) => servers.at(-1)!.close(resolve));
    expect(await ask(gone.host)).toEqual({ ok: false, refusal });
  });

  test('what is no text is refused', async () => {
    const { host } = await service((_, response) => response.end(Buffer.from([0x7b, 0xff, 0xfe, 0x00])));
    expect(await ask(host)).toEqual({ ok: false, refusal: { code: 'not-text' } });
  });
});
