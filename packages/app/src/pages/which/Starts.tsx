import { setsWarning } from '@neckfall/answers';
import { type Choice, type StartMethod, startMethods } from '@neckfall/engine';
import { FitWidth, type OnionLook, SectionRow, sectionRowOf } from '../../pictures/index.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { FactTable } from './FactTable.tsx';
import { startFactRows } from './facts-of.ts';
import { Onward } from './Onward.tsx';
import { StartNotes } from './StartNotes.tsx';

type Props = { choices: readonly Choice[]; isNamed: boolean; look: OnionLook };

/** The ways to start one onion, set side by side: what comes of each here, then what is known of it, with sources. */
export function Starts({ choices, isNamed, look }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const wordsOf = (start: StartMethod) => say(`start-head.${start}`);
  const { picture } = sectionRowOf(
    choices.map(({ kind, summary }) => ({ name: wordsOf(kind.start), summary, look })),
    speaker,
  );
  const flowers = setsWarning(choices, speaker);
  const absent = startMethods.filter((start) => !choices.some(({ kind }) => kind.start === start));
  return (
    <div class="starts">
      <h2 id="starts">{say('app.which.starts', { name: choices[0].kind.names[0] })}</h2>
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      <FactTable
        labelledBy="starts"
        rows={startFactRows}
        columns={choices.map(({ kind, summary }) => {
          const isChosen = asked.value.start === kind.start;
          const chosen = { start: kind.start, plantOut: null };
          const onward = {
            when: hrefTo('when', { ...chosen, date: null }),
            season: hrefTo('season', { ...chosen, date: summary.plan.startDay }),
          };
          return {
            key: kind.start,
            head: isChosen
              ? say('app.which.starts.chosen', { start: wordsOf(kind.start) })
              : wordsOf(kind.start),
            crop: { kind, summary },
            foot: <Onward onward={onward} name={kind.names[0]} start={kind.start} />,
            isChosen,
          };
        })}
      />
      {flowers !== null && <p class="heed">{flowers}</p>}
      {isNamed
        ? absent.map((start) => <p key={start}>{say('which.not-sold', { start: wordsOf(start) })}</p>)
        : asked.value.holds === null && <p>{say('app.which.starts.perhaps')}</p>}
      <StartNotes starts={choices.map(({ kind }) => kind.start)} />
    </div>
  );
}
