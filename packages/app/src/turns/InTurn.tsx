import type { ComponentChildren, VNode } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { nextTurn } from './next-turn.ts';

type Props = {
  children: ComponentChildren;
  /** What stands is renewed at once: it follows a finger, and the next key goes on from it. */
  live?: boolean;
};

type Parts = {
  given: ComponentChildren[];
  /** What stands on the page: of these, or of those given before. */
  shown: ComponentChildren[];
  isNew: boolean[];
  /** Where to go on. */
  next: number;
};

/**
 * Puts its children on the page one after the other, each in a task of its own, so that none holds up a finger; and
 * in the same way puts newer ones in the place of those that stand.
 */
export function InTurn({ children, live = false }: Props) {
  const [, again] = useState(0);
  const last = useRef<ComponentChildren>(null);
  const parts = useRef<Parts>({ given: [], shown: [], isNew: [], next: 0 });
  if (last.current !== children) {
    last.current = children;
    take(parts.current, Array.isArray(children) ? children : [children], live);
  }
  const { shown, isNew } = parts.current;
  const isWhole = isNew.every(Boolean);
  useLayoutEffect(() => {
    if (isWhole) return;
    return nextTurn(() => {
      step(parts.current);
      again((turn) => turn + 1);
    });
  });
  return (
    <>
      {[...shown]}
      {!isWhole && <div hidden data-waiting />}
    </>
  );
}

/** The first part that is new is shown at once. */
function take(parts: Parts, given: ComponentChildren[], live: boolean): void {
  const { shown } = parts;
  parts.given = given;
  shown.length = Math.min(shown.length, given.length);
  parts.isNew = given.map((part, at) => at < shown.length && shown[at] === part);
  // parts that changed places would be there twice on the way
  const isMoved = shown.some((part, at) => {
    const key = keyOf(part);
    return key != null && key !== keyOf(given[at]) && given.some((other) => keyOf(other) === key);
  });
  const first = parts.isNew.indexOf(false);
  if (isMoved) putAll(parts, given.length);
  else if (live && shown.length > 0) putAll(parts, shown.length);
  else if (first >= 0) put(parts, first);
}

function putAll(parts: Parts, count: number): void {
  for (let at = 0; at < count; at++) put(parts, at);
}

function put({ given, shown, isNew }: Parts, at: number): void {
  shown[at] = given[at];
  isNew[at] = true;
}

/** Goes round from where it was: while parts are given anew all the time, the last of them get their turn too. */
function step(parts: Parts): void {
  const { given, shown, isNew } = parts;
  const from = Math.min(parts.next, shown.length);
  for (let count = 0; count < given.length; count++) {
    const at = (from + count) % given.length;
    if (isNew[at]) continue;
    put(parts, at);
    parts.next = at + 1;
    return;
  }
}

function keyOf(part: ComponentChildren): unknown {
  return (part as VNode | null | undefined)?.key;
}
