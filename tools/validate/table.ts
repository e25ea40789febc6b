/** A Markdown table. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

export const percent = (share: number) => `${Math.round(100 * share)} %`;
