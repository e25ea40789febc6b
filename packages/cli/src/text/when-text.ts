import type { Plan, StartTrial, StartWindow, WhenAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Frame } from '../frame.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

export function whenText(frame: Frame, answer: WhenAnswer, cultivar: string | null): string {
  const { speaker, label } = frame;
  return [
    wrap(headline(answer, cultivar, label, speaker)),
    wrap(speaker.reason(answer.reason)),
    '',
    speaker.say('when.table'),
    weekTable(answer.starts, speaker),
    '',
    howWeKnow(frame, bestPlan(answer)),
    '',
  ].join('\n');
}

function bestPlan({ starts, windows }: WhenAnswer): Plan | null {
  const best = starts.find(({ dayOfYear }) => dayOfYear === windows[0]?.best);
  return best?.summary.plan ?? null;
}

function headline(
  { starts, windows }: WhenAnswer,
  cultivar: string | null,
  place: string,
  speaker: Speaker,
): string {
  const { say, any, dayOfYear } = speaker;
  const { plan } = starts[0].summary;
  const crop = say(`crop-kind.${plan.start}`, { type: cultivar ?? say(`type.${plan.type}`) });
  if (windows.length === 0) return say('when.none', { place, crop });
  if (windows.length === 1 && windows[0].from === 1 && windows[0].to === 358) {
    return say('when.any-week', { place, crop, best: dayOfYear(windows[0].best) });
  }
  return say('when.windows', {
    place,
    crop,
    windows: any(windows.map((window) => windowWords(window, speaker))),
  });
}

function windowWords({ from, to, best }: StartWindow, { say, dayOfYear }: Speaker): string {
  if (from === to) return say('when.window-one', { from: dayOfYear(from) });
  return say('when.window', { from: dayOfYear(from), to: dayOfYear(to), best: dayOfYear(best) });
}

/** Weeks next to each other that come out alike share a line. */
function weekTable(starts: readonly StartTrial[], speaker: Speaker): string {
  const { say, dayOfYearRange, numberRange, quantity } = speaker;
  const titles = ['weeks', 'comes', 'good', 'neck-fall', 'diameter'] as const;
  return table(
    titles.map((title) => ({ title: say(`when.column.${title}`) })),
    alike(starts).map((run) => {
      const first = run[0].summary;
      const good = run.map(({ summary }) => 10 * summary.seasonShares.good);
      const falls = run.map(({ summary }) => summary.neckFall.p50).filter((day) => day !== null);
      const sizes = run.map(({ summary }) => summary.bulbDiameterMm.p50).filter((size) => size !== null);
      return [
        dayOfYearRange(run[0].dayOfYear, run[run.length - 1].dayOfYear),
        first.gamble ? say('when.gamble') : say(`verdict.${first.outcome}`),
        say('when.good-years', { range: numberRange(Math.min(...good), Math.max(...good)) }),
        falls.length > 0 ? speaker.dayRange(Math.min(...falls), Math.max(...falls)) : say('none'),
        sizes.length > 0
          ? Math.min(...sizes) === Math.max(...sizes)
            ? quantity('bulbLength', sizes[0])
            : speaker.quantityRange('bulbLength', Math.min(...sizes), Math.max(...sizes))
          : say('none'),
      ];
    }),
  );
}

function alike(starts: readonly StartTrial[]): StartTrial[][] {
  const runs: StartTrial[][] = [];
  for (const trial of starts) {
    const run = runs.at(-1);
    const { outcome, gamble } = trial.summary;
    if (run && run[0].summary.outcome === outcome && run[0].summary.gamble === gamble) run.push(trial);
    else runs.push([trial]);
  }
  return runs;
}
