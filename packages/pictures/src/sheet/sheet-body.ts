import { markupText } from '../drawing/markup-text.ts';
import { drawnText } from '../drawing/svg-text.ts';
import type { Block, Part, Sheet } from './sheet.ts';
import { sheetColours } from './sheet-look.ts';

/** A sheet as HTML. @param level of its heading: 1 in a page of its own, lower inside another */
export function sheetBody(sheet: Sheet, level: 1 | 2 = 1): string {
  const { heading, top, note, picture, caption, columns, cautions, foot } = sheet;
  const under = level + 1;
  const svg = (drawn: Sheet['picture']['svg']) =>
    drawnText(drawn, { colours: sheetColours, title: heading, fontFamily: 'Plain, sans-serif' })
      // told by the figure's label
      .replace(/<title>.*?<\/title>/s, '')
      .trim();
  const column = (all: readonly Part[]) => `<div>${all.map((one) => part(one, under)).join('')}</div>`;
  return [
    `<article class="sheet" lang="${markupText(sheet.language)}">`,
    `<h${level} class="heading">${markupText(heading)}</h${level}>`,
    ...top.map((one) => block(one)),
    note.length > 0 ? `<div class="note">${note.map((line) => paragraph(line)).join('')}</div>` : '',
    `<figure role="img" aria-label="${markupText(picture.summary)}">`,
    `<div class="wide" aria-hidden="true">${svg(picture.svg)}</div>`,
    `<div class="narrow" aria-hidden="true">${svg(picture.narrow)}</div>`,
    '</figure>',
    caption === null ? '' : paragraph(caption, 'caption'),
    `<div class="columns">${columns
      .filter((some) => some.length > 0)
      .map(column)
      .join('')}</div>`,
    `<div class="columns lower">${column([cautions])}${column([foot])}</div>`,
    '</article>',
  ]
    .filter((line) => line !== '')
    .join('\n');
}

const paragraph = (text: string, look?: string) =>
  `<p${look === undefined ? '' : ` class="${look}"`}>${markupText(text)}</p>`;

function part({ title, blocks }: Part, level: number): string {
  const inside = blocks.map((one) => block(one, title)).join('');
  return `<section><h${level} class="title">${markupText(title)}</h${level}>${inside}</section>`;
}

function block(one: Block, title = ''): string {
  if (one.kind === 'text') return paragraph(one.text, one.look);
  if (one.kind === 'list')
    return `<ul>${one.items.map((item) => `<li>${markupText(item)}</li>`).join('')}</ul>`;
  const { head, rows, shares } = one;
  const widths = shares.map((share) => `<col class="c${Math.round(100 * share)}">`).join('');
  const heads = head?.map((cell) => `<th scope="col">${markupText(cell)}</th>`).join('');
  const body = rows.map(([first, ...rest]) => {
    const cells = rest.map((cell) => `<td>${markupText(cell)}</td>`).join('');
    return `<tr><th scope="row">${markupText(first)}</th>${cells}</tr>`;
  });
  return [
    `<table aria-label="${markupText(title)}"><colgroup>${widths}</colgroup>`,
    heads === undefined ? '' : `<thead><tr>${heads}</tr></thead>`,
    `<tbody>${body.join('')}</tbody></table>`,
  ].join('');
}
