import type { PlantValues } from '../../packages/engine/src/index.ts';
import { answeredOf, everywhere, type Places } from './published-plan.ts';
import { type SizeTrial, sizeTrials } from './size-trials.ts';

export type SizeResult = {
  trial: SizeTrial;
  /** Median over weather years of the median bulb, g; 0 where no year makes a bulb. */
  answeredG: number;
};

export function sizeResults(values: PlantValues, places: Places = everywhere): SizeResult[] {
  return sizeTrials.filter(places).map((trial) => ({ trial, answeredG: answeredOf(trial, values).bulbG }));
}

/** All ln(answered / published). */
export type SizeErrors = {
  /** By trial, mean over its treatments, beyond the printed range where there is one; only trials whose level counts. */
  levels: Map<string, number>;
  /** By trial, each treatment with the mean of its trial taken out; only trials of several treatments. */
  shapes: Map<string, number[]>;
  /** By district, mean of the levels of its trials: they share soil and weather, so that many trials count as one. */
  districts: Map<string, number>;
};

export function sizeErrors(results: readonly SizeResult[]): SizeErrors {
  const levels = new Map<string, number>();
  const shapes = new Map<string, number[]>();
  const ofDistrict = new Map<string, number[]>();
  for (const [id, treatments] of byTrial(results)) {
    const logs = treatments.map(logOf);
    const level = mean(logs);
    if (logs.length > 1)
      shapes.set(
        id,
        logs.map((log) => log - level),
      );
    if (!treatments.some(({ trial }) => trial.hasLevel)) continue;
    const beyond = mean(treatments.map(beyondRange));
    levels.set(id, beyond);
    const { district } = treatments[0].trial;
    ofDistrict.set(district, [...(ofDistrict.get(district) ?? []), beyond]);
  }
  const districts = new Map([...ofDistrict].map(([district, of]) => [district, mean(of)]));
  return { levels, shapes, districts };
}

/** Treatments of each trial, trials in the order of their first. */
export function byTrial(results: readonly SizeResult[]): Map<string, SizeResult[]> {
  const trials = new Map<string, SizeResult[]>();
  for (const result of results) {
    const { trial } = result.trial;
    trials.set(trial, [...(trials.get(trial) ?? []), result]);
  }
  return trials;
}

/** A crop without bulbs counts as one of 1 g. */
const logOf = ({ trial, answeredG }: SizeResult) => Math.log(Math.max(1, answeredG) / trial.publishedG);

/** The same beyond the printed range over cultivars or years, 0 inside; where there is none, from the figure itself. */
function beyondRange(result: SizeResult): number {
  const { lowG, highG, publishedG } = result.trial;
  const log = logOf(result);
  if (lowG === undefined || highG === undefined) return log;
  return Math.max(log - Math.log(highG / publishedG), Math.min(0, log - Math.log(lowG / publishedG)));
}

const mean = (of: readonly number[]) => of.reduce((a, b) => a + b, 0) / of.length;
