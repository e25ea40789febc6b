import { type Choice, groupKinds } from '@neckfall/engine';
import { DataTable, FitWidth, SectionRow, sectionRowOf } from '../../pictures/index.ts';
import { voice } from '../../state/settings.ts';
import { capital } from './capital.ts';
import { colourOf } from './colour-of.ts';

/** All kinds cut through, on one line and to one scale, in the order of the list. */
export function Sections({ choices }: { choices: readonly Choice[] }) {
  const speaker = voice.value;
  const { say } = speaker;
  const entries = groupKinds(choices).map(({ type, start, choices: [{ kind, summary }] }) => ({
    name: say('which.kind', { type: capital(say(`type.${type}`)), start: say(`start.${start}`) }),
    summary,
    colour: colourOf(kind),
  }));
  const { picture, table } = sectionRowOf(entries, speaker);
  return (
    <section aria-labelledby="sections">
      <h2 id="sections">{say('app.which.sections')}</h2>
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      <details>
        <summary>{say('app.table')}</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
        <section class="scroll" aria-labelledby="sections" tabIndex={0}>
          <DataTable {...table} />
        </section>
      </details>
    </section>
  );
}
