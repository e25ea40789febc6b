import { onWords } from '@neckfall/answers';
import { DataTable } from '@neckfall/pictures';
import { voice } from '../../state/settings.ts';
import { dateOf } from './DayBar.tsx';
import { type Compared, type Drawn, lineOn, toldLines } from './drawn-lines.ts';
import { isOfBothHalves } from './lined-up.ts';
import { movedDay } from './moved-day.ts';
import { shownDay } from './shown-day.ts';

/** All lines on the day that is looked at, as a table that goes with it. */
export function OnThatDay({ drawn, compared }: { drawn: Drawn; compared: Compared }) {
  const speaker = voice.value;
  const { say } = speaker;
  const day = shownDay(drawn, movedDay.value);
  const hasDates = drawn.isLinedUp && isOfBothHalves(drawn);
  const caption = say('app.together.on-day', { date: dateOf(drawn, day, speaker) });
  const rows = toldLines(drawn.lines, compared, speaker).map(({ name }, i) => {
    const { date, hours, high, leaves, across, stage } = onWords(lineOn(drawn.lines[i], day), speaker);
    return [name, ...(hasDates ? [date] : []), hours, high, leaves, across, stage];
  });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard
    <section class="scroll on-day" aria-label={caption} tabIndex={0}>
      <DataTable
        caption={caption}
        head={[
          say(`together.column.${compared}`),
          ...(hasDates ? [say('together.column.date')] : []),
          say('together.column.hours'),
          say('together.column.high'),
          say('together.column.leaves'),
          say('together.column.across'),
          say('together.column.stage'),
        ]}
        rows={rows}
      />
    </section>
  );
}
