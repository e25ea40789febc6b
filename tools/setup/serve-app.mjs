import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { connectSources, weatherHostOf } from './weather-host.mjs';

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.txt': 'text/plain; charset=utf-8',
  '.woff2': 'font/woff2',
};

const zipped = promisify(gzip);

/** As docs/hosting.md asks of any host. */
const headersFor = (host) => ({
  'Content-Security-Policy': `default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; ${connectSources(host)}; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`,
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'Permissions-Policy': 'geolocation=(self)',
  'Cross-Origin-Opener-Policy': 'same-origin',
});

/**
 * Serves the files of a folder on this machine only; returns the server, its address and what it sent. Port 0: any
 * free one. `host`: the weather service that the build was made for, if any.
 */
export function serve(folder, port = 0, host = weatherHostOf()) {
  const sent = [];
  const headers = headersFor(host);
  const server = createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    send(folder, headers, request, response, sent).catch(() => response.writeHead(404).end());
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      resolve({ server, sent, url: `http://127.0.0.1:${server.address().port}/` });
    });
  });
}

/** Fails, before anything is sent, where there is no such file or it cannot be read. */
async function send(folder, headers, request, response, sent) {
  const path = normalize(decodeURIComponent(new URL(request.url, 'http://localhost').pathname));
  const file = join(folder, path.endsWith(sep) || path.endsWith('/') ? join(path, 'index.html') : path);
  if (!file.startsWith(folder + sep)) throw new Error(path);
  const type = types[extname(file)] ?? 'application/octet-stream';
  const isText = !/^(application\/octet|font)/.test(type);
  const zips = isText && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
  // whole, so that no file stays open behind a download that is broken off
  const content = await readFile(file);
  const body = zips ? await zipped(content) : content;
  response.writeHead(200, {
    ...headers,
    'Content-Type': type,
    'Content-Length': body.length,
    'Cache-Control': path.includes('assets') ? 'public, max-age=31536000, immutable' : 'no-cache',
    ...(isText ? { Vary: 'Accept-Encoding' } : {}),
    ...(zips ? { 'Content-Encoding': 'gzip' } : {}),
  });
  // node leaves the body out for HEAD
  response.end(body);
  if (request.method === 'GET') sent.push({ path, bytes: body.length });
}
