import type { BuildOptions } from 'vite';

export const appFolder: string;
export function buildApp(folder?: string, options?: BuildOptions): Promise<string[]>;
