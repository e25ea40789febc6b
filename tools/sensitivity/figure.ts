import { cropWords, laterWords, signed } from './say.ts';
import type { Change, FactorChange, Study } from './study.ts';

// Sizes in user units; two panels side by side.
const panelWidth = 500;
const gap = 24;
const margin = 24;
const headHeight = 104;
const rowHeight = 27;
const panelHead = 46;
const panelFoot = 26;
const labelWidth = 158;
const trackGap = 22;
const barHeight = 9;
const columns = 2;

type Track = {
  title: string;
  of: (change: Change) => number | null;
  /** Left edge and width within a panel. */
  left: number;
  width: number;
  /** Largest change shown, the same in all panels. */
  reach: number;
};

/** The picture docs/sensitivity.svg: a panel a place, two bars a cause, days on the left and millimetres on the right. */
export function sensitivityFigure(studies: readonly Study[]): string {
  const half = (panelWidth - labelWidth - trackGap) / 2;
  const track = (title: string, left: number, of: Track['of']): Track => ({
    title,
    of,
    left,
    width: half,
    reach: reachOf(studies, of),
  });
  const tracks = [
    track('days tops go over later', labelWidth, (change) => change.neckFallDays),
    track('mm the bulb is wider', labelWidth + half + trackGap, (change) => change.diameterMm),
  ];
  const panelHeight = panelHead + studies[0].changes.length * rowHeight + panelFoot;
  const rows = Math.ceil(studies.length / columns);
  const width = 2 * margin + columns * panelWidth + (columns - 1) * gap;
  const height = headHeight + rows * (panelHeight + gap);
  const panels = studies.map((study, at) => {
    const x = margin + (at % columns) * (panelWidth + gap);
    const y = headHeight + Math.floor(at / columns) * (panelHeight + gap);
    return `<g transform="translate(${x} ${y})">\n${panel(study, tracks, panelHeight)}\n</g>`;
  });
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="title desc" font-family="Georgia, 'Times New Roman', serif" font-size="14">`,
    `<title id="title">What moves the answer most: ${studies.map(({ place }) => place.name).join(', ')}</title>`,
    `<desc id="desc">${described(studies)}</desc>`,
    style,
    `<rect class="paper" width="${width}" height="${height}"/>`,
    `<text class="ink" x="${margin}" y="38" font-size="22">What moves the answer most</text>`,
    legend(),
    ...panels,
    '</svg>',
  ].join('\n')}\n`;
}

/** Paper, ink and skin of the app; the reader's theme decides. */
const style = `<style>
.paper { fill: #fbf7ee } .card { fill: #f3ebdb } .ink { fill: #231b12 } .soft { fill: #5a4c3a }
.rule { stroke: #cdbd9f } .zero { stroke: #5a4c3a } .more { fill: #8c4712; stroke: #8c4712 } .less { fill: #fbf7ee; stroke: #8c4712 }
@media (prefers-color-scheme: dark) {
.paper { fill: #1b1610 } .card { fill: #282017 } .ink { fill: #f4ecdd } .soft { fill: #c9bba4 }
.rule { stroke: #5c4f3d } .zero { stroke: #c9bba4 } .more { fill: #eab077; stroke: #eab077 } .less { fill: #1b1610; stroke: #eab077 }
}
</style>`;

function legend(): string {
  return [
    `<rect class="more" x="${margin}" y="57" width="26" height="${barHeight}"/>`,
    `<text class="ink" x="${margin + 34}" y="66">more: warmer, longer days needed, later, twice the plants, slower; no watering</text>`,
    `<rect class="less" x="${margin}" y="79" width="26" height="${barHeight}"/>`,
    `<text class="ink" x="${margin + 34}" y="88">less: cooler, shorter days needed, earlier, half the plants, faster</text>`,
  ].join('\n');
}

function panel({ place, usual, plan, changes }: Study, tracks: readonly Track[], height: number): string {
  const bottom = height - panelFoot;
  const crop = `${cropWords(plan)}${usual.diameterMm === null ? '' : `, ${usual.diameterMm.toFixed(0)} mm`}`;
  return [
    `<text class="ink" x="0" y="14" font-size="17">${place.name}<tspan class="soft" font-size="13" dx="8">${crop}</tspan></text>`,
    ...tracks.map((track) => axis(track, bottom)),
    ...changes.map((change, row) => bars(change, tracks, panelHead + row * rowHeight)),
  ].join('\n');
}

function axis({ title, left, width, reach }: Track, bottom: number): string {
  const middle = left + width / 2;
  const marks = [-1, 0, 1].map((side) => {
    const x = middle + (side * width) / 2;
    const anchor = side === 0 ? 'middle' : side < 0 ? 'start' : 'end';
    return [
      `<line class="${side === 0 ? 'zero' : 'rule'}" x1="${x}" y1="${panelHead - 6}" x2="${x}" y2="${bottom}"/>`,
      `<text class="soft" x="${x}" y="${bottom + 17}" font-size="12" text-anchor="${anchor}">${signed(side * reach)}</text>`,
    ].join('');
  });
  return [
    `<rect class="card" x="${left}" y="${panelHead - 6}" width="${width}" height="${bottom - panelHead + 6}"/>`,
    ...marks,
    `<text class="soft" x="${middle}" y="${panelHead - 13}" font-size="12" text-anchor="middle">${title}</text>`,
  ].join('\n');
}

function bars({ factor, less, more }: FactorChange, tracks: readonly Track[], top: number): string {
  const label = `<text class="ink" x="${labelWidth - 8}" y="${top + 15}" font-size="12.5" text-anchor="end">${factor.label}</text>`;
  const both = tracks.flatMap((track) => [
    ...(less ? [bar(less, track, top + 1, 'less')] : []),
    bar(more, track, top + (less ? 12 : 6), 'more'),
  ]);
  return [label, ...both].join('\n');
}

function bar(change: Change, { of, left, width, reach }: Track, y: number, kind: 'less' | 'more'): string {
  const value = of(change);
  const middle = left + width / 2;
  if (value === null)
    return `<text class="ink" x="${middle + 4}" y="${y + barHeight}" font-size="12">never</text>`;
  const length = (Math.min(1, Math.abs(value) / reach) * width) / 2;
  const x = value < 0 ? middle - length : middle;
  const side = value < 0 ? 'start' : 'end';
  const beyond =
    Math.abs(value) > reach
      ? `<text class="ink" x="${middle + (value < 0 ? 6 : -6)}" y="${y + barHeight}" font-size="12" text-anchor="${side}">${signed(value)}</text>`
      : '';
  return `<rect class="${kind}" x="${x.toFixed(1)}" y="${y}" width="${length.toFixed(1)}" height="${barHeight}"><title>${change.shift.words}: ${signed(value, 1)}</title></rect>${beyond}`;
}

/** Ends of an axis in whole tens; going without water would dwarf all else, so it may run over and is told in figures. */
function reachOf(studies: readonly Study[], of: Track['of']): number {
  const sizes = studies.flatMap(({ changes }) =>
    changes
      .flatMap(({ less, more }) => (less ? [less, more] : []))
      .map((change) => Math.abs(of(change) ?? 0)),
  );
  return Math.max(10, 10 * Math.ceil(Math.max(...sizes) / 10));
}

/** The picture for those who don't see it: what leads at each place. */
function described(studies: readonly Study[]): string {
  const leads = studies.map(({ place, changes }) => {
    const all = changes.flatMap(({ less, more }) => [less, more]).filter((change) => change !== null);
    const days = largest(all, (change) => change.neckFallDays);
    const size = largest(all, (change) => change.diameterMm);
    return `${place.name}: ${days.shift.words}, tops go over ${laterWords(days.neckFallDays)}; ${size.shift.words}, bulb ${signed(size.diameterMm, 0)} mm.`;
  });
  return `Bars for each cause, in days and in millimetres. The longest at each place: ${leads.join(' ')}`;
}

function largest(changes: readonly Change[], of: Track['of']): Change {
  const size = (change: Change) => Math.abs(of(change) ?? Number.POSITIVE_INFINITY);
  return changes.reduce((a, b) => (size(b) > size(a) ? b : a));
}
