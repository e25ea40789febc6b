import {
  type MonthlyClimate,
  openSite,
  type PlanForm,
  planDefaults,
  runnerOf,
} from '../../packages/engine/src/index.ts';

/** A climate and a plan as they travel between Node and a browser; `months` holds the monthly fields. */
export type PlainCase = {
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  months: Record<string, number[]>;
  plan: Pick<PlanForm, 'type' | 'start' | 'startDay'> & Partial<PlanForm>;
};

export type SeasonNumbers = Record<string, number>;

/** The continuous outputs of the mean season and of one generated season. */
export function seasonNumbers({ months, plan, ...at }: PlainCase): SeasonNumbers {
  const fields = Object.fromEntries(
    Object.entries(months).map(([name, values]) => [name, Float64Array.from(values)]),
  );
  const site = openSite({ climate: { ...at, ...fields } as MonthlyClimate, years: 2, seed: 11 });
  const runner = runnerOf(site, { ...planDefaults, ...plan });
  const numbers: SeasonNumbers = {};
  const put = (kind: string, { reverted, ...outcome }: ReturnType<typeof runner.meanSeason>) => {
    for (const [name, value] of Object.entries(outcome)) numbers[`${kind} ${name}`] = value;
    numbers[`${kind} reverted`] = Number(reverted);
  };
  put('mean', runner.meanSeason());
  put('generated', runner.season(1));
  return numbers;
}
