export const appFolder: string;
export function buildApp(folder?: string): Promise<string[]>;
