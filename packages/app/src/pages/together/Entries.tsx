import { startName } from '@neckfall/answers';
import { noOnion } from '../../address/no-onion.ts';
import { go, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { type LineFound, longName } from './drawn-lines.ts';
import type { LineAsked } from './line-asked.ts';
import { writePlaces, writeStarts } from './together-address.ts';
import type { Comparison } from './use-comparison.ts';

type Props = {
  comparison: Comparison;
  found: readonly { asked: LineAsked; found: LineFound }[];
  /** Told when an entry was taken away, and its buttons with it. */
  onGone: (told: string) => void;
};

type Entry = { key: string; name: string; season: string | null };

/** The lines in their order, each to be moved or taken away. */
export function Entries({ comparison, found, onGone }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const { compared, places, wanted } = comparison;
  const lines = compared === 'places' ? wanted : found.map(({ asked }) => asked);
  const entries = lines.map((line): Entry => {
    const one = found.find(({ asked }) => asked === line);
    const plan = one?.found.reply.told.summary.plan;
    return {
      key: line.key,
      name:
        compared === 'starts' && plan
          ? startName(plan, speaker)
          : one
            ? longName(one, speaker)
            : (line.at.name ?? `${line.at.latitudeDeg}, ${line.at.longitudeDeg}`),
      season: one ? seasonHref(one) : null,
    };
  });
  if (entries.length === 0) return null;
  /** The same entries in an order of their own, or without one. */
  const put = (order: readonly number[]) => {
    if (compared === 'places') go({ places: writePlaces(order.map((at) => places[at])) }, { replace: true });
    else {
      const plans = order.map((at) => found[at].found.reply.told.summary.plan);
      go({ starts: writeStarts(plans) }, { replace: true });
    }
  };
  const all = entries.map((_, at) => at);
  const swap = (at: number, other: number) =>
    put(all.map((one) => (one === at ? other : one === other ? at : one)));
  return (
    <>
      <p id="entries-of">{say('app.together.list')}</p>
      <ol class="entries" aria-labelledby="entries-of">
        {entries.map(({ key, name, season }, at) => (
          <li key={key}>
            <span class="entry-name">{season ? <a href={season}>{name}</a> : name}</span>
            <span class="entry-do">
              <button
                type="button"
                class="plain"
                disabled={at === 0}
                aria-label={say('app.together.up.of', { name })}
                onClick={() => swap(at, at - 1)}
              >
                {say('app.together.up')}
              </button>
              <button
                type="button"
                class="plain"
                disabled={at === entries.length - 1}
                aria-label={say('app.together.down.of', { name })}
                onClick={() => swap(at, at + 1)}
              >
                {say('app.together.down')}
              </button>
              <button
                type="button"
                class="plain"
                aria-label={say('app.together.remove.of', { name })}
                onClick={() => {
                  put(all.filter((one) => one !== at));
                  onGone(say('app.together.gone', { name }));
                }}
              >
                {say('app.together.remove')}
              </button>
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}

/** The season of what stands on a line, at its place. */
function seasonHref({ asked: { at }, found: { reply } }: { asked: LineAsked; found: LineFound }): string {
  const { start, startDay } = reply.told.summary.plan;
  return hrefTo('season', {
    ...noOnion,
    at: { latitudeDeg: at.latitudeDeg, longitudeDeg: at.longitudeDeg },
    name: at.name,
    elevation: at.elevationM,
    class: reply.class,
    start,
    date: startDay,
    plantOut: null,
    planting: null,
    bed: null,
  });
}
