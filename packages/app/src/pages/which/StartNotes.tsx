import { catalogueSources, type StartFact, startFacts, startTopics } from '@neckfall/data';
import type { StartMethod } from '@neckfall/engine';
import { voice } from '../../state/settings.ts';

type Props = { starts: readonly StartMethod[] };

/** All that is known of these ways of starting, each fact with its source. */
export function StartNotes({ starts }: Props) {
  const { say, fact } = voice.value;
  const sources: string[] = [];
  const origin = (of: StartFact['origin']) => {
    if (of === 'practice' || of === 'memory') return say(`app.which.starts.${of}`);
    if (!sources.includes(of)) sources.push(of);
    return say('cultivars.from.source', { number: sources.indexOf(of) + 1 });
  };
  const notes = starts.map((start) => ({
    start,
    facts: startTopics.flatMap((topic) =>
      startFacts[start].facts[topic].map((known) => ({
        words: fact(known),
        from: origin(known.origin),
        code: known.code,
      })),
    ),
  }));
  return (
    <details>
      <summary>{say('app.which.starts.known')}</summary>
      {notes.map(({ start, facts }) => (
        <div key={start}>
          <h3>{say(`start-head.${start}`)}</h3>
          <ul>
            {facts.map(({ code, words, from }) => (
              <li key={code}>
                {words} <span class="hint">({from})</span>
              </li>
            ))}
          </ul>
        </div>
      ))}
      <h3>{say('app.which.starts.sources')}</h3>
      <ol>
        {sources.map((key) => (
          <li key={key}>{catalogueSources[key].title}</li>
        ))}
      </ol>
    </details>
  );
}
