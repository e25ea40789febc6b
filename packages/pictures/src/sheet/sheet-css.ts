import type { Sheet } from './sheet.ts';
import { gaps, type Look, looks, papers, sheetColours } from './sheet-look.ts';

/** A sheet's lengths are in em of a tenth of its points, so that all of it grows and shrinks at one place. */
const emPt = 10;

const em = (pt: number, sizePt = emPt) => `${Number((pt / sizePt).toFixed(4))}em`;

function set(look: Look): string {
  const { face, sizePt, line, colour } = looks[look];
  const family = face === 'answers' ? 'Answers, Georgia, serif' : 'Plain, "Source Sans 3", Arial, sans-serif';
  const weight = face === 'text' ? 400 : 600;
  return `font:${weight} ${em(sizePt)}/${line} ${family};color:${sheetColours[colour]}`;
}

/**
 * The look of a sheet.
 *
 * @param as `page`: as it is printed, wherever it is shown; `file`: so on paper, and as wide as the screen on a screen
 */
export function sheetCss(sheet: Pick<Sheet, 'paper' | 'scale'>, as: 'page' | 'file'): string {
  const { widthPt, heightPt } = papers[sheet.paper];
  const page = [
    `.sheet{font-size:${Number((emPt * sheet.scale).toFixed(3))}pt;width:${widthPt - 2 * gaps.margin}pt;margin:0;padding:0}`,
    '.narrow{display:none}',
  ].join('\n');
  if (as === 'page') {
    return `${common(sheet)}\n${page}\n.sheet{padding:${gaps.margin}pt;min-height:${Math.floor(heightPt - 2 * gaps.margin - 2)}pt}`;
  }
  return [
    common(sheet),
    pageRule(sheet),
    `html{background:${sheetColours['paper-2']}}`,
    'body{margin:0}',
    `@media print{\n${page}\nhtml{background:#fff}\n}`,
    '@media screen{',
    `.sheet{font-size:17px;max-width:${em((widthPt - 2 * gaps.margin) / sheet.scale)};margin:0 auto;padding:${em(gaps.margin)}}`,
    '.narrow{display:none}',
    '}',
    '@media screen and (max-width:56em){',
    '.sheet{font-size:18px;padding:1.1em;overflow-wrap:anywhere}',
    '.sheet .columns{display:block}.sheet .columns>div+div{margin-top:.9em}',
    '.wide{display:none}.narrow{display:block}',
    '.sheet .small{font-size:.85em}',
    '}',
  ].join('\n');
}

/** The page it is printed on. */
export function pageRule({ paper }: Pick<Sheet, 'paper'>): string {
  const size = paper === 'a4' ? 'A4 portrait' : 'letter portrait';
  return `@page{size:${size};margin:${gaps.margin}pt}`;
}

function common({ scale }: Pick<Sheet, 'scale'>): string {
  const { body, title, small, caption } = looks;
  const rule = `${gaps.rule}pt solid ${sheetColours.line}`;
  // the column's gap stays whatever the size
  const column = gaps.column / scale;
  return [
    '.sheet,.sheet *{box-sizing:content-box}',
    // geometricPrecision: letters as wide as the measure has them, not as a screen's pixels would round them
    `.sheet{background:${sheetColours.paper};color:${sheetColours.ink};color-scheme:light;text-align:left;text-rendering:geometricPrecision;hyphens:manual;-webkit-text-size-adjust:none;text-size-adjust:none;overflow-wrap:break-word;print-color-adjust:exact;-webkit-print-color-adjust:exact}`,
    '.sheet h1,.sheet h2,.sheet h3,.sheet p,.sheet ul,.sheet figure,.sheet table{margin:0;padding:0;max-width:none}',
    `.sheet .heading{${set('heading')};text-wrap:initial}`,
    ...(['dateline', 'verdict', 'because'] as const).map(
      (look) => `.sheet .${look}{${set(look)};margin-top:${em(gaps.block, looks[look].sizePt)}}`,
    ),
    `.sheet .note{background:${sheetColours['paper-2']};margin-top:${em(gaps.part * 0.8)};padding:${em(gaps.noteTop)} ${em(gaps.noteEdge)}}`,
    `.sheet .note p{${set('note')}}`,
    `.sheet figure{margin-top:${em(gaps.part)}}`,
    '.sheet svg{display:block;width:100%;height:auto}',
    `.sheet .caption{${set('caption')};margin-top:${em(gaps.block, caption.sizePt)}}`,
    `.sheet .columns{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1fr);column-gap:${em(column)};margin-top:${em(gaps.part)}}`,
    `.sheet .lower{border-top:${rule};margin-top:${em(gaps.part / 2)};padding-top:${em(gaps.part / 2)}}`,
    `.sheet section+section{margin-top:${em(gaps.part)}}`,
    `.sheet .title{${set('title')};margin-bottom:${em(1.5, title.sizePt)}}`,
    '.sheet ul{list-style:none}',
    `.sheet li{${set('body')};position:relative;padding-left:${em(gaps.indent, body.sizePt)};margin:0}`,
    `.sheet li+li{margin-top:${em(gaps.item, body.sizePt)}}`,
    `.sheet li::before{content:"";position:absolute;left:.12em;top:.53em;width:.26em;height:.26em;border-radius:50%;background:${sheetColours['skin-2']}}`,
    '.sheet table{border-collapse:separate;border-spacing:0;table-layout:fixed;width:100%}',
    `.sheet th,.sheet td{${set('body')};vertical-align:top;text-align:left;border:0;background:none;padding:${em(gaps.row, body.sizePt)} ${em(gaps.cell, body.sizePt)} ${em(gaps.row, body.sizePt)} 0}`,
    '.sheet th:last-child,.sheet td:last-child{padding-right:0}',
    `.sheet tbody th{${set('first')}}`,
    `.sheet thead th{${set('head')}}`,
    `.sheet tr+tr>*,.sheet thead+tbody>tr:first-child>*{border-top:${rule}}`,
    ...[30, 33, 37, 40, 60].map((share) => `.sheet .c${share}{width:${share}%}`),
    `.sheet .small{${set('small')};margin-top:${em(gaps.block, small.sizePt)}}`,
  ]
    .filter((line) => line !== '')
    .join('\n');
}
