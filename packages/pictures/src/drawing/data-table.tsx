/** The numbers of a picture, for those who read rather than look. */
export type DataTableProps = {
  caption: string;
  head: readonly string[];
  rows: readonly (readonly string[])[];
};

export function DataTable({ caption, head, rows }: DataTableProps) {
  return (
    <table class="picture-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          {head.map((cell) => (
            <th key={cell} scope="col">
              {cell}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([first, ...others]) => (
          <tr key={first}>
            <th scope="row">{first}</th>
            {others.map((cell, column) => (
              <td key={head[column + 1]} data-name={head[column + 1]}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
