import { setsWarning } from '@neckfall/answers';
import { type Choice, type StartMethod, startMethods } from '@neckfall/engine';
import { SectionRow, sectionRowOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { onionLook } from '../../state/onion-look.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { FactTable } from './FactTable.tsx';
import { startFactRows } from './facts-of.ts';
import { Onward } from './Onward.tsx';
import { StartNotes } from './StartNotes.tsx';

type Props = { choices: readonly Choice[]; isNamed: boolean };

/** What comes of each way to start one onion, cut through. */
export function StartsDrawn({ choices }: { choices: readonly Choice[] }) {
  const speaker = voice.value;
  const { picture, table } = sectionRowOf(
    choices.map(({ kind, summary }) => ({
      name: speaker.say(`start-head.${kind.start}`),
      summary,
      look: onionLook.value,
    })),
    speaker,
  );
  return (
    <>
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      <TakePicture
        name="starts"
        what={() => speaker.say('app.which.starts', { name: choices[0].kind.names[0] })}
        draw={(width) => <SectionRow width={width} {...picture} />}
        summary={picture.summary}
        table={() => table}
      />
    </>
  );
}

/** The ways to start one onion, set side by side: what comes of each here, then what is known of it, with sources. */
export function Starts({ choices, isNamed }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const wordsOf = (start: StartMethod) => say(`start-head.${start}`);
  const flowers = setsWarning(choices, speaker);
  const absent = startMethods.filter((start) => !choices.some(({ kind }) => kind.start === start));
  return (
    <div class="starts">
      <h2 id="starts">{say('app.which.starts', { name: choices[0].kind.names[0] })}</h2>
      <details>
        <summary>{say('app.which.starts.facts')}</summary>
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
        {isNamed
          ? absent.map((start) => <p key={start}>{say('which.not-sold', { start: wordsOf(start) })}</p>)
          : asked.value.holds === null && <p>{say('app.which.starts.perhaps')}</p>}
      </details>
      {flowers !== null && <p class="heed">{flowers}</p>}
      <StartNotes starts={choices.map(({ kind }) => kind.start)} />
    </div>
  );
}
