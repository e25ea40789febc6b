import { randomBytes } from 'node:crypto';
import { mkdtempSync, readdirSync, readlinkSync, rmSync, writeFileSync } from 'node:fs';
import { type IncomingMessage, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { serve } from './serve-app.mjs';

const hasProc = process.platform === 'linux';
/** More than connections hold on the way. */
const large = 16_000_000;

describe('the server of the app', () => {
  let folder: string;
  let served: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'serve-app-'));
    writeFileSync(join(folder, 'index.html'), '<p>Onions</p>');
    writeFileSync(join(folder, 'large.txt'), randomBytes(large));
    served = await serve(folder);
  });
  afterAll(() => {
    served.server.close();
    served.server.closeAllConnections();
    rmSync(folder, { recursive: true });
  });

  const ask = (method: string, path = '', headers = {}) =>
    new Promise<IncomingMessage>((resolve, reject) => {
      request(served.url + path, { method, headers, agent: false }, resolve)
        .on('error', reject)
        .end();
    });

  test('gives a file whole, zipped where that is taken', async () => {
    const plain = await ask('GET');
    expect(plain.statusCode).toBe(200);
    expect(plain.headers['content-length']).toBe('13');
    expect(await text(plain)).toBe('<p>Onions</p>');
    const zipped = await fetch(served.url, { headers: { 'accept-encoding': 'gzip' } });
    expect(zipped.headers.get('content-encoding')).toBe('gzip');
    expect(await zipped.text()).toBe('<p>Onions</p>');
    expect(served.sent).toEqual([
      { path: '/', bytes: 13 },
      { path: '/', bytes: Number(zipped.headers.get('content-length')) },
    ]);
  });

  test('to HEAD it tells of a file what GET would, and sends no body', async () => {
    const before = served.sent.length;
    const head = await ask('HEAD', 'large.txt');
    expect(head.statusCode).toBe(200);
    expect(head.headers['content-length']).toBe(String(large));
    expect(await text(head)).toBe('');
    expect(served.sent).toHaveLength(before);
    expect((await ask('HEAD', 'nowhere.txt')).statusCode).toBe(404);
  });

  // RFC 9110, 15.5.6: an answer 405 names in Allow the methods that are taken
  test.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH'])('takes no %s', async (method) => {
    const response = await ask(method);
    expect(response.statusCode).toBe(405);
    expect(response.headers.allow).toBe('GET, HEAD');
    expect(await text(response)).toBe('');
  });

  test('what is not there, lies outside or is no name of a file is not found', async () => {
    for (const path of ['nowhere.txt', '%2e%2e/%2e%2e/etc/passwd', '%ff', '%00', 'assets']) {
      expect((await ask('GET', path)).statusCode, path).toBe(404);
    }
  });

  test.runIf(hasProc)('a file that is there but cannot be read is not found', async () => {
    // memory that no address leads to: it opens, and fails as it is read
    const process = await serve('/proc/self');
    try {
      expect((await fetch(`${process.url}mem`)).status).toBe(404);
      expect(process.sent).toEqual([]);
    } finally {
      process.server.close();
      process.server.closeAllConnections();
    }
  });

  test.runIf(hasProc)('a download that is broken off leaves no file open', async () => {
    const isOpen = () => readdirSync('/proc/self/fd').some((fd) => linkOf(fd).startsWith(folder));
    const response = await ask('GET', 'large.txt', { 'accept-encoding': 'gzip' });
    response.destroy();
    await vi.waitFor(() => expect(isOpen()).toBe(false));
    expect((await ask('HEAD')).statusCode).toBe(200);
  });
});

function linkOf(fd: string): string {
  try {
    return readlinkSync(join('/proc/self/fd', fd));
  } catch {
    return '';
  }
}
