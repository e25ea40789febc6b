import { DataTable, type DataTableProps } from '@neckfall/pictures';
import { voice } from '../state/settings.ts';
import { InTurn } from '../turns/InTurn.tsx';

type Props = DataTableProps & {
  note?: string | null;
  /** What else the picture shows. */
  also?: DataTableProps | null;
};

/** The numbers of a picture, folded away under it. */
export function Twin({ note = null, also = null, ...table }: Props) {
  return (
    <details>
      <summary>{voice.value.say('app.table')}</summary>
      {note !== null && <p>{note}</p>}
      <InTurn>
        {[table, ...(also ? [also] : [])].map((one) => (
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard
          <section key={one.caption} class="scroll" aria-label={one.caption} tabIndex={0}>
            <DataTable {...one} />
          </section>
        ))}
      </InTurn>
    </details>
  );
}
