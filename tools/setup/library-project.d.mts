export const exampleNames: string[];
export function libraryProject(): Promise<{ folder: string; tarballs: string[] }>;
export function printed(folder: string, ...args: string[]): Promise<string>;
