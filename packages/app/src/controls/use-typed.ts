import { useLayoutEffect, useState } from 'preact/hooks';

/**
 * A text as it is being typed, kept while answers arrive: only another value takes its place. It does so before the next
 * key: later, it would take away what was typed as the field came up.
 */
export function useTyped(shown: string): [string, (text: string) => void] {
  const [text, setText] = useState(shown);
  useLayoutEffect(() => setText(shown), [shown]);
  return [text, setText];
}
