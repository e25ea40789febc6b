import { type Choice, groupKinds, typicalOf } from '@neckfall/engine';
import { DataTable, SectionRow, sectionRowOf } from '@neckfall/pictures';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { lookOf } from './look-of.ts';

/** More kinds are told in words and numbers: two rows on a phone, one on a desk. */
const mostDrawn = 4;

type Props = { choices: readonly Choice[] };

/** The first kinds cut through, on one line and to one scale, in the order of the list. */
export function Sections({ choices }: Props) {
  const { say } = voice.value;
  return (
    <div>
      <h2 id="sections" class="unseen">
        {say('app.which.sections')}
      </h2>
      <InTurn>
        <Drawn choices={choices} />
        <InNumbers choices={choices} />
        <Taken choices={choices} />
      </InTurn>
    </div>
  );
}

function Drawn({ choices }: Props) {
  const { picture } = sectionsOf(choices, mostDrawn);
  return <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>;
}

function Taken({ choices }: Props) {
  const { picture, table } = sectionsOf(choices, mostDrawn);
  return (
    <TakePicture
      name="kinds"
      what={() => voice.value.say('app.which.sections')}
      draw={(width) => <SectionRow width={width} {...picture} />}
      summary={picture.summary}
      table={() => table}
    />
  );
}

function InNumbers({ choices }: Props) {
  return (
    <details>
      <summary>{voice.value.say('app.table')}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
      <section class="scroll" aria-labelledby="sections" tabIndex={0}>
        <DataTable {...sectionsOf(choices, choices.length).table} />
      </section>
    </details>
  );
}

function sectionsOf(choices: readonly Choice[], most: number) {
  const { say } = voice.value;
  const entries = groupKinds(choices)
    .slice(0, most)
    .map((group) => {
      const { type, start } = group;
      const { kind, summary } = typicalOf(group);
      return {
        name: say('which.kind', { type: say(`type-head.${type}`), start: say(`start.${start}`) }),
        summary,
        look: lookOf(kind),
      };
    });
  return sectionRowOf(entries, voice.value);
}
