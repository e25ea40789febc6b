import type { Server } from 'node:http';

/** A file sent, with the bytes of its body as they went over the wire. */
export type Sent = { path: string; bytes: number };

export function serve(
  folder: string,
  port?: number,
  host?: string | null,
): Promise<{ server: Server; url: string; sent: Sent[] }>;
