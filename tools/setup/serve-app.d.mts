import type { Server } from 'node:http';

export function serve(folder: string, port?: number): Promise<{ server: Server; url: string }>;
