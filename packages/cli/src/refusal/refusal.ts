import type { MessageKey, MessageValues } from '@neckfall/words';

type ErrorKey = Extract<MessageKey, `error.${string}`>;
export type RefusalCode = ErrorKey extends `error.${infer Code}` ? Code : never;

/** 2: a usage or a value; 3: a file; 1: our own fault. */
type RefusalExit = 1 | 2 | 3;

/** Why a request is not answered. Its sentence is the message `error.<code>` with `values` filled in. */
export type Refusal = {
  code: RefusalCode;
  exit: RefusalExit;
  /** Option, column or file. */
  field: string | null;
  values: MessageValues;
  expected: string | null;
  nearest: readonly string[];
};

type RefusalError = Error & { refusal: Refusal };

export type RefusalDetails = {
  field?: string;
  values?: MessageValues;
  expected?: string;
  nearest?: readonly string[];
  exit?: RefusalExit;
  cause?: unknown;
};

/** An error to throw; caught at the rim, where it becomes one line and an exit code. */
export function refuse(code: RefusalCode, details: RefusalDetails = {}): RefusalError {
  const { field = null, values = {}, expected = null, nearest = [], exit = 2, cause } = details;
  return Object.assign(new Error(code, { cause }), {
    refusal: { code, exit, field, values, expected, nearest },
  });
}

export function refusalOf(error: unknown): Refusal | null {
  return error instanceof Error && 'refusal' in error ? (error as RefusalError).refusal : null;
}
