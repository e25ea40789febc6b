/*
 * Puts an entry into a list of a JSON document as it is written: every byte that was there stays, and the new ones
 * follow the hand of those beside them. The text is known to be JSON (RFC 8259).
 */
import { type Node, parseTree } from 'jsonc-parser';

const byteOrderMark = '\ufeff';

/** The text with an entry at the end of a list of its outermost object, which gets the list where it has none. */
export function withEntry(text: string, list: string, entry: object): string {
  if (text.startsWith(byteOrderMark)) return byteOrderMark + withEntry(text.slice(1), list, entry);
  const root = parseTree(text, [], { disallowComments: true });
  const members = root?.children ?? [];
  const hand = handOf(text);
  // of names that come twice the last counts
  const held = members.findLast(({ children }) => children?.[0]?.value === list)?.children?.[1];
  if (held?.type === 'array') return inList(text, held, entry, hand);
  const whole = listOf(entry, hand);
  if (held) return text.slice(0, held.offset) + whole + text.slice(endOf(held));
  const before = members.at(-1);
  const at = before ? endOf(before) : (root?.offset ?? 0) + 1;
  const added = `${before ? ',' : ''}${hand.break}${hand.indent}"${list}":${hand.space}${whole}`;
  return text.slice(0, at) + added + (before ? '' : hand.break) + text.slice(at);
}

function inList(text: string, list: Node, entry: object, hand: Hand): string {
  const entries = list.children ?? [];
  const last = entries.at(-1);
  if (!last) return text.slice(0, list.offset) + listOf(entry, hand) + text.slice(endOf(list));
  const before = entries.at(-2);
  const from = before ? text.indexOf(',', endOf(before)) + 1 : list.offset + 1;
  const gap = text.slice(from, last.offset);
  const shown = text.slice(last.offset, endOf(last));
  const inside = shown.includes('\n')
    ? setIn(JSON.stringify(entry, null, hand.indent), gap.slice(gap.lastIndexOf('\n') + 1), hand)
    : inOneLine(entry, shown);
  return `${text.slice(0, endOf(last))},${gap}${inside}${text.slice(endOf(last))}`;
}

const endOf = ({ offset, length }: Node) => offset + length;

/** How a document is written. */
type Hand = { break: string; indent: string; space: string };

function handOf(text: string): Hand {
  const first = /^\s*\{(\r?\n)([ \t]*)"(?:[^"\\]|\\.){0,200}":( ?)/.exec(text);
  if (first) return { break: first[1], indent: first[2], space: first[3] };
  return { break: '', indent: '', space: /^\s*\{\s*"(?:[^"\\]|\\.){0,200}": /.test(text) ? ' ' : '' };
}

function listOf(entry: object, hand: Hand): string {
  if (hand.break === '') return `[${inOneLine(entry, hand.space === '' ? '{' : '{ ')}]`;
  const inside = setIn(JSON.stringify(entry, null, hand.indent), hand.indent.repeat(2), hand);
  return `[${hand.break}${hand.indent.repeat(2)}${inside}${hand.break}${hand.indent}]`;
}

function setIn(pretty: string, indent: string, hand: Hand): string {
  return pretty.split('\n').join(`${hand.break || '\n'}${indent}`);
}

/** Spaced as the one beside it. */
function inOneLine(entry: object, beside: string): string {
  if (!/^\{\s/.test(beside)) return JSON.stringify(entry);
  const fields = Object.entries(entry).map(
    ([name, value]) => `${JSON.stringify(name)}: ${JSON.stringify(value)}`,
  );
  return `{ ${fields.join(', ')} }`;
}
