import { type Known, knowns, type TwinForecasts } from './study.ts';

export type Figures = { twins: number; meanErrorDays: number; holds: number; widthDays: number };

/** Mean absolute error, share held by 8 in 10 and their width, of each forecast. */
export function figuresOf(twins: readonly TwinForecasts[]): Record<Known, Figures> {
  const mean = (of: (twin: TwinForecasts) => number) =>
    twins.reduce((sum, twin) => sum + of(twin), 0) / twins.length;
  const figures = (known: Known): Figures => ({
    twins: twins.length,
    meanErrorDays: mean(({ forecasts }) => Math.abs(forecasts[known].errorDays)),
    holds: mean(({ forecasts }) => +forecasts[known].holds),
    widthDays: mean(({ forecasts }) => forecasts[known].widthDays),
  });
  return Object.fromEntries(knowns.map((known) => [known, figures(known)])) as Record<Known, Figures>;
}
