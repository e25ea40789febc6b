import { DataTable, type DataTableProps } from '../pictures/index.ts';
import { voice } from '../state/settings.ts';

/** The numbers of a picture, folded away under it. */
export function Twin(table: DataTableProps) {
  return (
    <details>
      <summary>{voice.value.say('app.table')}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
      <section class="scroll" aria-label={table.caption} tabIndex={0}>
        <DataTable {...table} />
      </section>
    </details>
  );
}
