import { lineName } from './names.ts';

type Word = { tab: string; what: 'hello' | 'here' | 'changed' };

/** Other tabs and windows that keep the same garden, as they are heard of while this one is open. */
export function otherTabs(on: { changed: () => void; heard: () => void }) {
  const line = 'BroadcastChannel' in globalThis ? new BroadcastChannel(lineName) : null;
  const tab = Math.random().toString(36).slice(2);
  const heard = new Set<string>();
  let count = 0;
  const tell = (what: Word['what']) => line?.postMessage({ tab, what } satisfies Word);

  line?.addEventListener('message', ({ data }: MessageEvent<Partial<Word> | null>) => {
    const { tab: other, what } = data ?? {};
    const isNew = other !== undefined && !heard.has(other);
    if (isNew) heard.add(other);
    if (what === 'hello') tell('here');
    if (what === 'hello' || what === 'here') {
      if (isNew) on.heard();
    } else on.changed();
  });

  return {
    /** Asks who else is there. */
    greet: () => tell('hello'),
    tellChange: () => tell('changed'),
    /** Marks a step as one of this tab, and like no other. */
    newMark: () => `${tab}.${++count}`,
    isOurs: (mark: string | null) => tabOf(mark) === tab,
    isTheirs: (mark: string | null) => heard.has(tabOf(mark)),
  };
}

function tabOf(mark: string | null): string {
  return mark?.split('.')[0] ?? '';
}
