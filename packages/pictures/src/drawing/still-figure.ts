import type { DataTableProps } from './data-table.tsx';
import { markupText } from './markup-text.ts';
import { paperColours } from './paper-colours.ts';

export type StillFigure = {
  /** As {@link svgText} writes it, without a caption: that stands under it as text. */
  svg: string;
  title: string;
  /** What the picture says, for those who don't see it. */
  summary: string;
  /** Paragraphs under the picture, its source among them. */
  caption: readonly string[];
  table: DataTableProps | null;
  /** What else the picture shows. */
  also?: DataTableProps | null;
  /** BCP 47 tag of the words. */
  lang: string;
};

/** A picture with its words and numbers as one HTML file: no script, and nothing that it asks anybody for. */
export function stillFigure(figure: StillFigure): string {
  const { svg, title, summary, caption, table, also = null, lang } = figure;
  const drawn = svg.trim().replace(/^<svg /, `<svg role="img" aria-label="${markupText(summary)}" `);
  return `<!doctype html>
<html lang="${markupText(lang)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${markupText(title)}</title>
<style>
${styles}
</style>
</head>
<body>
<main>
<h1>${markupText(title)}</h1>
<figure>
${drawn}
<figcaption>
${caption.map((paragraph) => `<p>${markupText(paragraph)}</p>`).join('\n')}
</figcaption>
</figure>
${[table, also].map((one) => (one === null ? '' : tableMarkup(one))).join('\n')}
</main>
</body>
</html>
`;
}

function tableMarkup({ caption, head, rows }: DataTableProps): string {
  const cell = (tag: string, text: string) => `<${tag}>${markupText(text)}</${tag.split(' ')[0]}>`;
  const body = rows.map(
    ([first, ...others]) =>
      `<tr>${cell('th scope="row"', first)}${others.map((text) => cell('td', text)).join('')}</tr>`,
  );
  return `<div>
<table>
<caption>${markupText(caption)}</caption>
<thead><tr>${head.map((text) => cell('th scope="col"', text)).join('')}</tr></thead>
<tbody>
${body.join('\n')}
</tbody>
</table>
</div>`;
}

const { paper, ink, line } = paperColours;

const styles = `html { background: ${paper}; color: ${ink}; font: 1.05rem/1.45 "Source Sans 3", Helvetica, Arial, sans-serif; }
body { margin: 0; }
main { max-width: 60rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.4rem; line-height: 1.25; }
figure { margin: 1rem 0; }
svg { display: block; max-width: 100%; height: auto; }
figcaption { color: ${paperColours['ink-2']}; font-size: 0.95rem; }
figcaption p { margin: 0.4rem 0; }
div { overflow-x: auto; }
table { border-collapse: collapse; margin: 1.5rem 0; font-variant-numeric: tabular-nums; }
caption { text-align: start; font-weight: 600; padding-block: 0.4rem; }
th, td { text-align: start; vertical-align: top; padding: 0.3rem 1rem 0.3rem 0; border-top: 1px solid ${line}; font-weight: 400; }
thead th { font-weight: 600; border-top: 0; }
@media print { tr, figure { break-inside: avoid; } }`;
