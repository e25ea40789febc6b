/** Why an answer is what it is; codes and values come from the engine. */
export const reasons = {} as const;
