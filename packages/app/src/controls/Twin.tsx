import { DataTable, type DataTableProps } from '../pictures/index.ts';
import { voice } from '../state/settings.ts';

/** The numbers of a picture, folded away under it. */
export function Twin({ note = null, ...table }: DataTableProps & { note?: string | null }) {
  return (
    <details>
      <summary>{voice.value.say('app.table')}</summary>
      {note !== null && <p>{note}</p>}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
      <section class="scroll" aria-label={table.caption} tabIndex={0}>
        <DataTable {...table} />
      </section>
    </details>
  );
}
