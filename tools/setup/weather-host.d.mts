export function weatherHostOf(env?: Record<string, string | undefined>): string | null;
export function connectSources(host?: string | null): string;
