/*
 * Puts an entry into a list of a JSON document as it is written: every byte that was there stays, and the new ones
 * follow the hand of those beside them. The text is known to be JSON (RFC 8259).
 */

type Span = { start: number; end: number };
type Members = { all: (Span & { name: string })[]; close: number };

/** The text with an entry at the end of a list of its outermost object, which gets the list where it has none. */
export function withEntry(text: string, list: string, entry: object): string {
  const { all, close } = membersOf(text, space(text, 0));
  const hand = handOf(text);
  // of names that come twice the last counts
  const member = all.filter(({ name }) => name === list).at(-1);
  if (member && text[member.start] === '[') return inList(text, member, entry, hand);
  const whole = listOf(entry, hand);
  if (member) return text.slice(0, member.start) + whole + text.slice(member.end);
  const before = all.at(-1);
  const at = before?.end ?? text.lastIndexOf('{', close) + 1;
  const added = `${before ? ',' : ''}${hand.break}${hand.indent}"${list}":${hand.space}${whole}`;
  return text.slice(0, at) + added + (before ? '' : hand.break) + text.slice(at);
}

function inList(text: string, { start }: Span, entry: object, hand: Hand): string {
  const { all, close } = entriesOf(text, start);
  const last = all.at(-1);
  if (!last) return text.slice(0, start) + listOf(entry, hand) + text.slice(close + 1);
  const from = all.length > 1 ? text.indexOf(',', all[all.length - 2].end) + 1 : start + 1;
  const gap = text.slice(from, last.start);
  const shown = text.slice(last.start, last.end);
  const inside = shown.includes('\n')
    ? setIn(JSON.stringify(entry, null, hand.indent), gap.slice(gap.lastIndexOf('\n') + 1), hand)
    : inOneLine(entry, shown);
  return `${text.slice(0, last.end)},${gap}${inside}${text.slice(last.end)}`;
}

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

/** The members of the object that begins there, and where it ends. */
function membersOf(text: string, open: number): Members {
  const all: Members['all'] = [];
  let at = space(text, open + 1);
  while (text[at] !== '}') {
    const nameEnd = endOfString(text, at);
    const name = JSON.parse(text.slice(at, nameEnd)) as string;
    const start = space(text, text.indexOf(':', nameEnd) + 1);
    const end = endOfValue(text, start);
    all.push({ name, start, end });
    at = afterComma(text, end);
  }
  return { all, close: at };
}

function entriesOf(text: string, open: number): { all: Span[]; close: number } {
  const all: Span[] = [];
  let at = space(text, open + 1);
  while (text[at] !== ']') {
    const end = endOfValue(text, at);
    all.push({ start: at, end });
    at = afterComma(text, end);
  }
  return { all, close: at };
}

function afterComma(text: string, at: number): number {
  const next = space(text, at);
  return text[next] === ',' ? space(text, next + 1) : next;
}

function endOfValue(text: string, start: number): number {
  let depth = 0;
  let at = start;
  do {
    const sign = text[at];
    if (sign === '"') at = endOfString(text, at);
    else {
      if (sign === '{' || sign === '[') depth++;
      if (sign === '}' || sign === ']') depth--;
      at++;
    }
  } while (depth > 0);
  // numbers and words end where something else begins
  if (/[-\dtfn]/.test(text[start])) while (at < text.length && !/[\s,\]}]/.test(text[at])) at++;
  return at;
}

function endOfString(text: string, start: number): number {
  let at = start + 1;
  while (text[at] !== '"') at += text[at] === '\\' ? 2 : 1;
  return at + 1;
}

function space(text: string, from: number): number {
  let at = from;
  while (/[\s\ufeff]/.test(text[at] ?? '')) at++;
  return at;
}
