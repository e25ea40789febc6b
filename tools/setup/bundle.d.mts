import type { BuildOptions, BuildResult } from 'esbuild';

export function bundled<T extends BuildOptions>(options: T): Promise<BuildResult<T>>;
export function bundle(): Promise<number>;
