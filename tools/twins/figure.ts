import { type DayNumber, formatDay } from '../../packages/engine/src/index.ts';
import type { DemoSeason, Step } from './demo.ts';

// Sizes in user units.
const width = 860;
const height = 470;
const left = 92;
const right = 24;
const top = 96;
const bottom = 78;

/** The picture docs/learning.svg: how the forecast of the day tops go over draws in, visit by visit. */
export function learningFigure({ steps, onsetDay, fellDay }: DemoSeason): string {
  const low = Math.min(...steps.map(({ fall }) => fall.p10), fellDay) - 4;
  const high = Math.max(...steps.map(({ fall }) => fall.p90), fellDay) + 4;
  const gap = (width - left - right) / steps.length;
  const x = (at: number) => left + gap * (at + 0.5);
  const y = (day: DayNumber) => top + ((high - day) / (high - low)) * (height - top - bottom);
  const edge = (of: (step: Step) => DayNumber) =>
    steps.map((step, at) => `${x(at).toFixed(1)} ${y(of(step)).toFixed(1)}`);
  const band = [...edge(({ fall }) => fall.p10), ...edge(({ fall }) => fall.p90).reverse()].join(' L');
  const afterOnset = steps.findIndex(({ day }) => day > onsetDay);
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="title desc" font-family="Georgia, 'Times New Roman', serif" font-size="14">`,
    '<title id="title">The tightening forecast: the day tops go over, visit by visit</title>',
    `<desc id="desc">${described(steps, fellDay)}</desc>`,
    style,
    `<rect class="paper" width="${width}" height="${height}"/>`,
    `<text class="ink" x="24" y="38" font-size="22">The tightening forecast</text>`,
    `<text class="soft" x="24" y="62">Day that tops go over at Pencarreg Bank, as forecast after each visit: middle, and 8 seasons in 10</text>`,
    ...weekLines(low, high).map(
      (day) =>
        `<line class="rule" x1="${left}" x2="${width - right}" y1="${y(day).toFixed(1)}" y2="${y(day).toFixed(1)}"/><text class="soft" x="${left - 10}" y="${(y(day) + 4).toFixed(1)}" font-size="12" text-anchor="end">${dayWords(day)}</text>`,
    ),
    `<path class="band" d="M${band} Z"/>`,
    `<path class="middle" d="M${edge(({ fall }) => fall.p50).join(' L')}"/>`,
    `<line class="truth" x1="${left}" x2="${width - right}" y1="${y(fellDay).toFixed(1)}" y2="${y(fellDay).toFixed(1)}"/>`,
    `<text class="ink" x="${left + 6}" y="${(y(fellDay) - 6).toFixed(1)}" font-size="13">tops went over ${dayWords(fellDay)}</text>`,
    ...(afterOnset > 0
      ? [
          `<line class="onset" x1="${(x(afterOnset) - gap / 2).toFixed(1)}" x2="${(x(afterOnset) - gap / 2).toFixed(1)}" y1="${top}" y2="${height - bottom}"/>`,
          `<text class="soft" x="${(x(afterOnset) - gap / 2 + 6).toFixed(1)}" y="${top + 12}" font-size="12">bulbs start ${dayWords(onsetDay)}</text>`,
        ]
      : []),
    ...steps.map(
      (step, at) =>
        `<circle class="dot" cx="${x(at).toFixed(1)}" cy="${y(step.fall.p50).toFixed(1)}" r="4"><title>${stepWords(step)}</title></circle><text class="soft" x="${x(at).toFixed(1)}" y="${height - bottom + 20}" font-size="12" text-anchor="middle">${dayWords(step.day)}</text><text class="ink" x="${x(at).toFixed(1)}" y="${height - bottom + 38}" font-size="12" text-anchor="middle">${notedWords[step.noted ?? 'none']}</text>`,
    ),
    '</svg>',
  ].join('\n')}\n`;
}

/** Paper, ink and skin of the app; the reader's theme decides. */
const style = `<style>
.paper { fill: #fbf7ee } .ink { fill: #231b12 } .soft { fill: #5a4c3a } .rule { stroke: #cdbd9f }
.band { fill: #8c4712; fill-opacity: 0.2 } .middle { fill: none; stroke: #8c4712; stroke-width: 2.5 } .dot { fill: #8c4712 }
.truth { stroke: #231b12; stroke-width: 1.5; stroke-dasharray: 6 4 } .onset { stroke: #5a4c3a; stroke-dasharray: 2 4 }
@media (prefers-color-scheme: dark) {
.paper { fill: #1b1610 } .ink { fill: #f4ecdd } .soft { fill: #c9bba4 } .rule { stroke: #5c4f3d }
.band { fill: #eab077 } .middle { stroke: #eab077 } .dot { fill: #eab077 } .truth { stroke: #f4ecdd } .onset { stroke: #c9bba4 }
}
</style>`;

const notedWords = { none: 'nothing', leaves: 'leaves', widths: 'bulbs', tops: 'tops' } as const;

const weekDays = 7;

function weekLines(low: DayNumber, high: DayNumber): DayNumber[] {
  const first = Math.ceil(low / weekDays) * weekDays;
  return Array.from({ length: Math.floor((high - first) / weekDays) + 1 }, (_, at) => first + weekDays * at);
}

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

export function dayWords(day: DayNumber): string {
  const [, month, date] = formatDay(day).split('-').map(Number);
  return `${date} ${months[month - 1]}`;
}

function stepWords({ day, fall }: Step): string {
  return `${dayWords(day)}: ${dayWords(fall.p50)}, from ${dayWords(fall.p10)} to ${dayWords(fall.p90)}`;
}

/** The picture for those who don't see it. */
function described(steps: readonly Step[], fellDay: DayNumber): string {
  return `Forecasts of the day that tops go over, after each visit. ${steps.map(stepWords).join('. ')}. Tops went over on ${dayWords(fellDay)}.`;
}
