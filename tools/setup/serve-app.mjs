import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { createGzip } from 'node:zlib';

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

/** As docs/hosting.md asks of any host. */
const headers = {
  'Content-Security-Policy':
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'Permissions-Policy': 'geolocation=(self)',
  'Cross-Origin-Opener-Policy': 'same-origin',
};

/**
 * Serves the files of a folder on this machine only; returns the server, its address and what it sent. Port 0: any
 * free one.
 */
export function serve(folder, port = 0) {
  const sent = [];
  const server = createServer((request, response) => {
    send(folder, request, response, sent).catch(() => {
      if (!response.headersSent) response.writeHead(404);
      response.end();
    });
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      resolve({ server, sent, url: `http://127.0.0.1:${server.address().port}/` });
    });
  });
}

async function send(folder, request, response, sent) {
  const path = normalize(decodeURIComponent(new URL(request.url, 'http://localhost').pathname));
  const file = join(folder, path.endsWith(sep) || path.endsWith('/') ? join(path, 'index.html') : path);
  if (!file.startsWith(folder + sep) || !(await stat(file)).isFile()) throw new Error(path);
  const type = types[extname(file)] ?? 'application/octet-stream';
  const isText = !/^(application\/octet|font)/.test(type);
  const zips = isText && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
  response.writeHead(200, {
    ...headers,
    'Content-Type': type,
    'Cache-Control': path.includes('assets') ? 'public, max-age=31536000, immutable' : 'no-cache',
    ...(zips ? { 'Content-Encoding': 'gzip', Vary: 'Accept-Encoding' } : {}),
  });
  const source = createReadStream(file);
  const body = zips ? source.pipe(createGzip()) : source;
  const record = { path, bytes: 0 };
  sent.push(record);
  body.on('data', (chunk) => {
    record.bytes += chunk.length;
  });
  body.pipe(response);
}
