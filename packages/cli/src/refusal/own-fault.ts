import type { Refusal } from './refusal.ts';

/** An error that nobody meant, as a refusal with exit code 1. */
export function ownFault(error: unknown): Refusal {
  const reason = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return { code: 'internal', exit: 1, field: null, values: { reason }, expected: null, nearest: [] };
}
