import type { Colour, StartTopic } from '@neckfall/data';
import { catalogueSources, type StartFact, startFacts } from '@neckfall/data';
import { type Choice, startMethods } from '@neckfall/engine';
import { FitWidth, SectionRow, sectionRowOf } from '../../pictures/index.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { capital } from './capital.ts';
import { weeks } from './facts-of.ts';

type Props = { choices: readonly Choice[]; isNamed: boolean; colour: Colour };

const levelTopics = ['choice', 'bolting', 'losses', 'work', 'cost'] as const satisfies readonly StartTopic[];
/** What is said of each way below the table; time comes first. */
const factTopics = ['time', 'choice', 'bolting', 'losses', 'work', 'cost', 'cautions'] as const;

/** The ways to start one onion, set side by side: what comes of each here, then what is known of it, with sources. */
export function Starts({ choices, isNamed, colour }: Props) {
  const speaker = voice.value;
  const { say, day, years, plants } = speaker;
  const ways = choices.map(({ kind, summary }) => ({
    start: kind.start,
    crop: { kind, summary },
    words: capital(say(`start.${kind.start}`)),
  }));
  const { picture } = sectionRowOf(
    ways.map(({ words, crop }) => ({ name: words, summary: crop.summary, colour })),
    speaker,
  );
  const absent = startMethods.filter((start) => !ways.some((way) => way.start === start));
  const columns = ['start', 'neck-fall', 'good', 'flower', 'time'] as const;
  return (
    <section class="starts" aria-labelledby="starts">
      <h2 id="starts">{say('app.which.starts', { name: choices[0].kind.names[0] })}</h2>
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
      <section class="scroll" aria-labelledby="starts" tabIndex={0}>
        <table>
          <caption>{say('app.which.starts.caption')}</caption>
          <thead>
            <tr>
              <th scope="col">{say('app.which.starts.way')}</th>
              {columns.map((column) => (
                <th key={column} scope="col">
                  {say(`which.column.${column}`)}
                </th>
              ))}
              {levelTopics.map((topic) => (
                <th key={topic} scope="col">
                  {say(
                    topic === 'bolting' || topic === 'cost'
                      ? `app.which.starts.${topic}`
                      : `which.column.${topic}`,
                  )}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {ways.map(({ start, crop, words }) => {
              const { neckFall, seasonShares, boltedPlantsShare, plan } = crop.summary;
              return (
                <tr key={start} aria-current={asked.value.start === start ? 'true' : undefined}>
                  <th scope="row">
                    <a href={hrefTo('season', { start, date: plan.startDay, plantOut: null })}>{words}</a>
                  </th>
                  <td>{day(plan.startDay)}</td>
                  <td>{neckFall.p50 === null ? say('never') : day(neckFall.p50)}</td>
                  <td>{years(seasonShares.good)}</td>
                  <td>{plants(boltedPlantsShare.p50 ?? 0)}</td>
                  <td>{weeks(crop, speaker)}</td>
                  {levelTopics.map((topic) => (
                    <td key={topic}>{say(`start-level.${topic}.${startFacts[start].levels[topic]}`)}</td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
      {isNamed ? (
        absent.map((start) => (
          <p key={start}>{capital(say('which.not-sold', { start: say(`start.${start}`) }))}.</p>
        ))
      ) : (
        <p>{say('app.which.starts.perhaps')}</p>
      )}
      <StartNotes starts={ways.map(({ start }) => start)} />
    </section>
  );
}

type NotesProps = { starts: readonly Choice['kind']['start'][] };

function StartNotes({ starts }: NotesProps) {
  const { say, fact } = voice.value;
  const sources: string[] = [];
  const origin = (of: StartFact['origin']) => {
    if (of === 'practice' || of === 'memory') return say(`app.which.starts.${of}`);
    if (!sources.includes(of)) sources.push(of);
    return say('cultivars.from.source', { number: sources.indexOf(of) + 1 });
  };
  const notes = starts.map((start) => ({
    start,
    facts: factTopics.flatMap((topic) =>
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
          <h3>{capital(say(`start.${start}`))}</h3>
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
