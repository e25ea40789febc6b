import type { BuildOptions, BuildResult } from 'esbuild';

export const elementFile: string;
export function buildElement<T extends BuildOptions>(options?: T): Promise<BuildResult<T>>;
