import type { PlaceYear } from '@neckfall/answers';
import type { WhenAnswer } from '@neckfall/engine';
import { DataTable, type DataTableProps, startHillsTableOf, yearTableOf } from '@neckfall/pictures';
import { useMemo } from 'preact/hooks';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';

/** Hills and year line as tables. */
export function StartTables({ answer, year }: { answer: WhenAnswer; year: PlaceYear }) {
  const speaker = voice.value;
  const { say } = speaker;
  const now = today.value;
  // the same whichever start is chosen
  return useMemo(() => {
    const starts = { answer, firstDay: year.firstDay, today: now, chosen: null, speaker };
    return (
      <InTurn>
        <details>
          <summary>{say('app.when.table.starts')}</summary>
          <WideTable {...startHillsTableOf(starts)} />
        </details>
        <details>
          <summary>{say('app.when.table.year')}</summary>
          <WideTable {...yearTableOf({ year, speaker })} />
        </details>
      </InTurn>
    );
  }, [answer, year, now, speaker]);
}

/** Scrolls inside its own box on a narrow screen. */
function WideTable(table: DataTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard
    <section class="scroll" aria-label={table.caption} tabIndex={0}>
      <DataTable {...table} />
    </section>
  );
}
