import { type ComponentChildren, toChildArray } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** Puts its children on the page one after the other, each in a task of its own, so that none holds up a finger. */
export function InTurn({ children }: { children: ComponentChildren }) {
  const parts = toChildArray(children);
  const [shown, show] = useState(1);
  useEffect(() => {
    if (shown >= parts.length) return;
    const timer = setTimeout(() => show(shown + 1));
    return () => clearTimeout(timer);
  }, [shown, parts.length]);
  return (
    <>
      {parts.slice(0, shown)}
      {shown < parts.length && <div hidden data-waiting />}
    </>
  );
}
